using System.Text;

namespace MarineService.Core.Exchange;

/// <summary>One thing that is wrong with an exercise book: the line, the column, what was there, and what was expected.</summary>
public sealed record ExerciseBookFault
{
    private const int Longest = 60;

    internal ExerciseBookFault(int line, string column, string value, string expected) =>
        (Line, Column, Value, Expected) = (line, column, value, expected);

    /// <summary>The number of the line on which the cell's record begins, from 1, the header's; 0 for the file as a whole.</summary>
    public int Line { get; }

    /// <summary>The column as the header names it; empty for a line, or the file, as a whole.</summary>
    public string Column { get; }

    /// <summary>What was there.</summary>
    public string Value { get; }

    /// <summary>What was expected instead.</summary>
    public string Expected { get; }

    /// <summary>Line, column, value and expectation in one line; a long value is cut short.</summary>
    /// <returns>Invariant text, such as "line 3, hours: '412,5'; expected hours with a decimal point, such as 412.5".</returns>
    public override string ToString()
    {
        string place = Line == 0 ? "file" : FormattableString.Invariant($"line {Line}");
        return $"{place}{(Column.Length == 0 ? "" : ", " + Shown(Column))}: '{Shown(Value)}'; expected {Expected}";
    }

    private static string Shown(string value)
    {
        string line = value.Replace('\r', ' ').Replace('\n', ' ');
        int cut = line.Length <= Longest ? line.Length : char.IsHighSurrogate(line[Longest - 1]) ? Longest - 1 : Longest;
        return cut == line.Length ? line : new StringBuilder(line, 0, cut, cut).Append("...").ToString();
    }
}
