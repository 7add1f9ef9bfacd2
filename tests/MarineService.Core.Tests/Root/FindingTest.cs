namespace MarineService.Core.Tests.Root;

public sealed class FindingTest
{
    private static readonly FindingRule Rule = new(
        "TEST-001", Severity.Act, "Gap too wide", "gap is {gap}, at most {widest gap}", Citation.Published("SAE J000", "2020", "table 9"), "close it to {widest gap}");

    private static readonly Finding Sample = Rule.On(
        "pulley 'alternator'", Figure.Of("gap", 25.4, FigureUnit.Millimeter), Figure.Of("widest gap", 12.7, FigureUnit.Millimeter));

    [Fact]
    public void Message_FillsEachFigureIn_InTheReadersUnits()
    {
        Assert.Equal("pulley 'alternator': gap is 25.4 mm, at most 12.7 mm", Sample.Message(DisplayUnits.Metric));
        Assert.Equal("pulley 'alternator': gap is 1.000 in, at most 0.500 in", Sample.Message(DisplayUnits.UsCustomary));
        Assert.Equal("TEST-001 Act: pulley 'alternator': gap is 25.4 mm, at most 12.7 mm", Sample.ToString());
    }

    [Fact]
    public void Finding_CarriesRuleAndFiguresAsData()
    {
        Assert.Same(Rule, Sample.Rule);
        Assert.Equal("TEST-001", Sample.Code);
        Assert.Equal(Severity.Act, Sample.Severity);
        Assert.Equal(25.4, Sample["gap"]!.Number);
        Assert.Null(Sample["depth"]);
        Assert.Equal(["gap", "widest gap"], Sample.Figures.Select(figure => figure.Name));
    }

    [Fact]
    public void Explanation_SaysAnswerFiguresRemedyRuleAndSource()
    {
        Explanation explanation = Sample.Explain(DisplayUnits.Metric);
        Assert.Equal(Sample.ToString(), explanation.Answer);
        Assert.Equal(
            """
            TEST-001 Act: pulley 'alternator': gap is 25.4 mm, at most 12.7 mm
              gap         25.4 mm
              widest gap  12.7 mm
              do          close it to 12.7 mm
              rule        Gap too wide
              source      SAE J000, 2020, table 9
            """.ReplaceLineEndings("\n"),
            explanation.ToString());
    }

    [Fact]
    public void Figures_AreACopy_ThatTheCallerCannotChange()
    {
        Figure[] figures = [Figure.Of("gap", 1, FigureUnit.Millimeter), Figure.Of("widest gap", 2, FigureUnit.Millimeter)];
        Finding finding = Rule.On("pulley", figures);
        figures[0] = Figure.Of("gap", 99, FigureUnit.Millimeter);
        Assert.Equal(1, finding["gap"]!.Number);
        Assert.IsNotType<Figure[]>(finding.Figures);
    }

    [Fact]
    public void Units_Undefined_AreRefusedByName()
    {
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => Sample.Message((DisplayUnits)7)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => Sample.Explain((DisplayUnits)7)).ParamName);
    }

    [Fact]
    public void Rule_WithoutItsParts_IsRefusedByName()
    {
        Assert.Equal("code", Assert.Throws<ArgumentException>(() => new FindingRule(" ", Severity.Act, "t", "m", Citation.CommonPractice)).ParamName);
        Assert.Equal("severity", Assert.Throws<ArgumentOutOfRangeException>(() => new FindingRule("A-001", (Severity)9, "t", "m", Citation.CommonPractice)).ParamName);
        Assert.Equal("title", Assert.Throws<ArgumentException>(() => new FindingRule("A-001", Severity.Act, "", "m", Citation.CommonPractice)).ParamName);
        Assert.Equal("message", Assert.Throws<ArgumentException>(() => new FindingRule("A-001", Severity.Act, "t", "", Citation.CommonPractice)).ParamName);
        Assert.Equal("citation", Assert.Throws<ArgumentNullException>(() => new FindingRule("A-001", Severity.Act, "t", "m", null!)).ParamName);
        Assert.Equal("subject", Assert.Throws<ArgumentException>(() => Rule.On("")).ParamName);
    }

    [Fact]
    public void Severities_RiseFromNoteToStop() =>
        Assert.Equal([Severity.Note, Severity.Advice, Severity.Act, Severity.Stop], Enum.GetValues<Severity>().Order());
}
