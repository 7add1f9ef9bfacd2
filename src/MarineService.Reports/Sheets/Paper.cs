namespace MarineService.Reports.Sheets;

/// <summary>Which paper a sheet is laid out for. The margins fit all of them.</summary>
public enum Paper
{
    /// <summary>Whatever the reader's printer is set to. The default value.</summary>
    OfPrinter = 0,

    /// <summary>A4, 210 mm by 297 mm (ISO 216).</summary>
    A4 = 1,

    /// <summary>Letter, 8.5 in by 11 in.</summary>
    Letter = 2,
}
