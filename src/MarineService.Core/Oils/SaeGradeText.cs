namespace MarineService.Core.Oils;

/// <summary>Reads grade designations and says what is wrong with the others.</summary>
internal static class SaeGradeText
{
    private const string Prefix = "SAE";

    /// <summary>Null when the text is a grade; otherwise what was expected in its place, as a part of a sentence.</summary>
    internal static string? Read(string text, out SaeGrade? grade)
    {
        grade = null;
        string bare = Bare(text);
        if (bare.Length == 0)
        {
            return "a grade such as 15W-40, 10W or 30";
        }

        string[] parts = bare.Split('-');
        if (parts.Length > 2)
        {
            return "one winter grade and one grade without W, such as 15W-40";
        }

        SaeWGrade? winter = WinterNamed(parts[0]);
        if (parts.Length == 1)
        {
            SaeNonWGrade? single = HotNamed(bare);
            grade = winter is null && single is null ? null : SaeGrade.Find(winter, single);
            return grade is null ? ExpectedSingle(bare) : null;
        }

        SaeNonWGrade? hot = HotNamed(parts[1]);
        if (winter is null)
        {
            return HotNamed(parts[0].TrimEnd('W')) is not null || WinterNamed(parts[1] + "W") is not null
                ? $"the winter grade first, one of {Names(SaeWGrade.All)}, and then a grade without W, such as 15W-40"
                : $"a winter grade before the hyphen, one of {Names(SaeWGrade.All)}";
        }

        if (hot is null)
        {
            return $"a grade without W after the hyphen, one of {Names(SaeNonWGrade.All)}";
        }

        grade = SaeGrade.Find(winter, hot);
        return grade is null ? Impossible(winter, hot) : null;
    }

    internal static string Fault(string text, string expected) => $"'{text}' is not a grade of SAE J300; expected {expected}.";

    internal static string Impossible(SaeWGrade? winter, SaeNonWGrade? hot) => FormattableString.Invariant(
        $"a pair that one oil can meet: {winter} asks for at least {winter?.Kv100Min} mm²/s at 100 °C, {hot} ends below {hot?.Kv100Max} mm²/s");

    private static string Bare(string text)
    {
        string bare = text.Trim().ToUpperInvariant();
        return bare.StartsWith(Prefix, StringComparison.Ordinal) ? bare.Substring(Prefix.Length).TrimStart() : bare;
    }

    // "15W40" is how people type it; the standard's own form has the hyphen, and guessing is not reading.
    private static string ExpectedSingle(string bare)
    {
        string[] parts = bare.Split('W');
        return parts.Length == 2 && WinterNamed(parts[0] + "W") is SaeWGrade winter && HotNamed(parts[1]) is SaeNonWGrade hot
            ? $"a hyphen between the two grades: {winter}-{hot}"
            : $"a winter grade ({Names(SaeWGrade.All)}), a grade without W ({Names(SaeNonWGrade.All)}), or both with a hyphen, such as 15W-40";
    }

    private static SaeWGrade? WinterNamed(string name) => SaeWGrade.All.FirstOrDefault(grade => grade.Designation == name);

    private static SaeNonWGrade? HotNamed(string name) => SaeNonWGrade.All.FirstOrDefault(grade => grade.Designation == name);

    private static string Names<T>(IReadOnlyList<T> grades) => string.Join(", ", grades);
}
