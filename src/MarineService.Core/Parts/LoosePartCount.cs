namespace MarineService.Core.Parts;

/// <summary>How many of one kind of loose part are off, and how many nobody can find.</summary>
public sealed class LoosePartCount
{
    internal LoosePartCount(LoosePart part, long off, long astray) => (Part, Off, Astray) = (part, off, astray);

    /// <summary>The kind of part.</summary>
    public LoosePart Part { get; }

    /// <summary>How many are off; below 0 when more went on than came off.</summary>
    public long Off { get; }

    /// <summary>How many were replaced by new ones while the old ones are still somewhere; below 0 when more were found than were lost.</summary>
    public long Astray { get; }

    /// <summary>The counts in words.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Part}: {Off} off, {Astray} astray");
}
