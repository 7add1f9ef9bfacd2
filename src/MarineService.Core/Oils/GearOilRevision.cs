namespace MarineService.Core.Oils;

/// <summary>Which revision of SAE J306 is meant.</summary>
public enum GearOilRevision
{
    /// <summary>February 2019, the newest that was looked at. The default value.</summary>
    February2019 = 0,

    /// <summary>2005: no 65, 70 and 75; 80 from 7.0 mm²/s; other least viscosities for 70W, 75W and 80W.</summary>
    Year2005 = 1,
}
