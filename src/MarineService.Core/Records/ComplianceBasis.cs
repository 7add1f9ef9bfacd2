namespace MarineService.Core.Records;

/// <summary>Which tolerance counts.</summary>
public enum ComplianceBasis
{
    /// <summary>None unless the maker states one. The default value.</summary>
    Warranty = 0,

    /// <summary>The tolerance of each task, ten percent unless stated.</summary>
    Planning = 1,
}
