namespace MarineService.Core.Cooling;

/// <summary>What the pump's cover closes on.</summary>
public enum CoverGasket
{
    /// <summary>A new gasket of the maker's thickness, or a new O-ring. The default value.</summary>
    New = 0,

    /// <summary>The old gasket or O-ring.</summary>
    Reused = 1,

    /// <summary>Sealant instead of a gasket.</summary>
    SealantAlone = 2,

    /// <summary>Nothing.</summary>
    None = 3,
}
