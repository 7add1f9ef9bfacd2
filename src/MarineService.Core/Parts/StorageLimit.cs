namespace MarineService.Core.Parts;

/// <summary>How long a guide lets a rubber lie in store.</summary>
public sealed record StorageLimit
{
    internal StorageLimit(int? initialYears, int extensionYears, string? group) =>
        (InitialYears, ExtensionYears, Group) = (initialYears, extensionYears, group);

    /// <summary>Years from the end of the quarter of cure; null when the guide sets no limit.</summary>
    public int? InitialYears { get; }

    /// <summary>Years more after an inspection that passed; 0 when the guide grants none.</summary>
    public int ExtensionYears { get; }

    /// <summary>The guide's storage group, "A", "B" or "C"; null when it has none.</summary>
    public string? Group { get; }

    /// <summary>The limit in words.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => InitialYears is not int years ? "no limit"
        : FormattableString.Invariant($"{years} years{(ExtensionYears > 0 ? $" and {ExtensionYears} more after inspection" : string.Empty)}{(Group is null ? string.Empty : $", group {Group}")}");
}
