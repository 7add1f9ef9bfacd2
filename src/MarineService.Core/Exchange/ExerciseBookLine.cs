using System.Text;

namespace MarineService.Core.Exchange;

/// <summary>A line that could not be read, as it stands in the file, with all that is wrong with it.</summary>
public sealed class ExerciseBookLine
{
    private readonly byte[] _utf8;

    internal ExerciseBookLine(int number, byte[] utf8, IReadOnlyList<ExerciseBookFault> faults) => (Number, _utf8, Faults) = (number, utf8, faults);

    /// <summary>The number of the line, from 1, the header's; the first one where a cell holds line breaks.</summary>
    public int Number { get; }

    /// <summary>The line as text, without the line break at its end; what is no UTF-8 is shown as replacement characters.</summary>
    public string Text => Encoding.UTF8.GetString(_utf8);

    /// <summary>The line byte by byte, without the line break at its end.</summary>
    public ReadOnlyMemory<byte> Utf8 => _utf8;

    /// <summary>What is wrong with it; at least one fault.</summary>
    public IReadOnlyList<ExerciseBookFault> Faults { get; }

    /// <summary>The line as it stands.</summary>
    /// <returns><see cref="Text"/>.</returns>
    public override string ToString() => Text;
}
