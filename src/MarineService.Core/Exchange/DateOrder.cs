namespace MarineService.Core.Exchange;

/// <summary>In which order the dates of a table name day, month and year.</summary>
/// <remarks>Nothing in 03/04/2026 tells which it is, so that whoever wrote the table must say.</remarks>
public enum DateOrder
{
    /// <summary>As ISO 8601 writes them, such as 2026-04-03. The default value.</summary>
    YearMonthDay = 0,

    /// <summary>Day first, such as 3.4.2026 or 03/04/2026; dates of ISO 8601 are read too.</summary>
    DayMonthYear = 1,

    /// <summary>Month first, such as 4/3/2026; dates of ISO 8601 are read too.</summary>
    MonthDayYear = 2,
}
