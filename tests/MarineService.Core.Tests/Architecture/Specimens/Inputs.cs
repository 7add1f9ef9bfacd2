#pragma warning disable // Specimens are bad on purpose: the tests show that each fault is found.
using MarineService.Core.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Architecture.Specimens.Inputs;

public static class Unguarded
{
    public static double OfNumber(double mm) => mm;

    public static string OfDate(LocalDate date) => "";

    public static string OfEnum(Severity severity) => "";

    public static string OfText(string text) => "";

    public static string OfTexts(IEnumerable<string> texts) => texts is null ? throw new ArgumentNullException(nameof(texts)) : "";

    public static double OfVolume(Volume volume) => volume.Liters;

    public static double WithWrongName(double mm) => Guard.InRange(mm, 0, 100, "mm", "other");
}

public static class Guarded
{
    public static double OfNumber(double mm) => Guard.InRange(mm, 0, 100, "mm");

    public static string OfDate(LocalDate date) => Guard.Date(date).ToString();

    public static string OfEnum(Severity severity) => Guard.Defined(severity).ToString();

    public static string OfText(string text) => Guard.NotNull(text);

    public static string OfOptional(string? text) => text ?? "";

    public static int OfTexts(IEnumerable<string> texts) => Guard.Items(texts).Count;

    public static double OfVolume(Volume? volume) => volume is Volume v ? Guard.InRange(Canonical.Liters(v), 0, 100, "L", nameof(volume)) : 0;
}
