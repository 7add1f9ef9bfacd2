namespace MarineService.Core.Records;

/// <summary>What kind of proof stands behind an entry.</summary>
public enum EvidenceKind
{
    /// <summary>A photograph of the part or the work. The default value.</summary>
    Photo = 0,

    /// <summary>A photograph of the hour meter's dial.</summary>
    DialPhoto = 1,

    /// <summary>A receipt or invoice for parts, fluids or work.</summary>
    Receipt = 2,

    /// <summary>Any other paper, such as a survey.</summary>
    Document = 3,
}
