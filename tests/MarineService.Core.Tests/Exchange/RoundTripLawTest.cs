using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Laws of documents, units and series on random histories.</summary>
public sealed class RoundTripLawTest
{
    [Law]
    public void DataSheetAndLog_WrittenAndRead_GiveTheSameDueList(int seed)
    {
        RandomHistory history = new(seed);
        ServiceLog log = ServiceLog.Of(history.Facts.Select(LogEntry.Of));
        string text = ServiceLogJson.ToText(log);
        ServiceLog read = ServiceLogJson.Read(Encoding.UTF8.GetBytes(text)).Value;
        Assert.Equal(text, ServiceLogJson.ToText(read));
        byte[] sheet = Encoding.UTF8.GetBytes(EngineSpecificationJson.ToText(RandomHistory.Specification));
        Assert.Equal(
            RandomHistory.Lines(log.DueList(RandomHistory.Specification, history.Last)),
            RandomHistory.Lines(read.DueList(EngineSpecificationJson.Read(sheet).Value, history.Last)));
    }

    /// <summary>The default for planning is worth saying when the maker states another tolerance.</summary>
    [Fact]
    public void Tolerance_ThatIsTheDefaultBesideTheMakers_SurvivesTheDocument()
    {
        ServiceTask oil = ServiceTask.Replace("oil", ServiceInterval.OfMonths(12)).WithMakerTolerance(5m).WithTolerance(ServiceTask.DefaultTolerancePercent);
        string text = EngineSpecificationJson.ToText(EngineSpecification.Named("Corrie 60P").With(oil));
        ServiceTask back = EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(text)).Value.Tasks[0];
        Assert.Equal((5m, ServiceTask.DefaultTolerancePercent), (back.MakerTolerancePercent, back.TolerancePercent));
    }

    [Law]
    public void Documents_OfAnyMembers_ReadBackTheSame_AndAreValid(int seed)
    {
        RandomDocuments documents = new(seed);
        AssertSurvives(documents.EngineSheet(), EngineSpecificationJson.ToText, utf8 => EngineSpecificationJson.Read(utf8));
        AssertSurvives(documents.BoatSheet(), BoatSpecificationJson.ToText, utf8 => BoatSpecificationJson.Read(utf8));
        AssertSurvives(documents.Log(), ServiceLogJson.ToText, utf8 => ServiceLogJson.Read(utf8));
    }

    [Law]
    public void Units_ChangeWordsAlone_NeverADecision(int seed)
    {
        RandomHistory history = new(seed);
        DueList due = RandomHistory.List(history.Facts, history.Last);
        foreach (TaskDue task in due.Tasks)
        {
            // Hours and dates are the same in both systems, so the whole explanation is.
            Assert.Equal(task.Explain(DisplayUnits.Metric).ToString(), task.Explain(DisplayUnits.UsCustomary).ToString());
        }

        Assert.Equal(Decisions(DueListJson.ToText(due)), Decisions(DueListJson.ToText(due, DisplayUnits.UsCustomary)));
    }

    [Law]
    public void FixedGrid_FromAMonthEnd_NeverDrifts(byte monthsAfter, byte completions)
    {
        LocalDate origin = new LocalDate(2000, 1, 31).PlusMonths(monthsAfter);
        ServiceLog log = ServiceLog.Empty.With(GridOrigin.Of(origin, "survey"));
        EngineSpecification sheet = EngineSpecification.Named("Corrie 60P")
            .With(ServiceTask.Inspect("survey", ServiceInterval.OfMonths(1)).WithAnchorPolicy(AnchorPolicy.FixedGrid));
        for (int k = 1; k <= 1 + (completions % 24); k++)
        {
            LocalDate due = log.DueList(sheet, origin.PlusMonths(k - 1))["survey"].IntervalDue.Date!.Value;
            Assert.Equal(origin.PlusMonths(k), due);
            log = log.With(Completion.Passed("survey", due));
        }
    }

    private static void AssertSurvives<T>(T document, Func<T, string> write, Func<byte[], ReadResult<T>> read)
        where T : class
    {
        string text = write(document);
        byte[] utf8 = Encoding.UTF8.GetBytes(text);
        ReadResult<T> back = read(utf8);
        Assert.True(back.IsRead, string.Join("; ", back.Faults.Select(fault => fault.ToString())) + text);
        Assert.Equal(PublicState.Of(document), PublicState.Of(back.Value));
        Assert.Equal(text, write(back.Value));
        Assert.True(Json.Schema.JsonSchema.FromText(DocumentKind.Of(utf8).Schema).Evaluate(System.Text.Json.JsonDocument.Parse(utf8).RootElement).IsValid, text);
    }

    private static string[] Decisions(string json) =>
        [.. json.Split('\n').Where(line => line.Contains("\"status\"", StringComparison.Ordinal) || line.Contains("\"due", StringComparison.Ordinal))];
}
