namespace MarineService.Core.Belts;

/// <summary>One thing that keeps parts from making a drive, or names from making a routing.</summary>
/// <param name="Place">Where, as a pointer into the drive's document: "/pulleys/2/name", "/routing/1".</param>
/// <param name="Value">What was there.</param>
/// <param name="Expected">What was expected.</param>
/// <param name="Message">The same in a sentence, for people.</param>
internal readonly record struct DriveFault(string Place, string Value, string Expected, string Message);
