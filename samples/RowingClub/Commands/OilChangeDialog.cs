using System.Globalization;
using System.Text.RegularExpressions;
using MarineService.Core;
using MarineService.Core.Fluids;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>Asks for an oil change step by step and says after each answer how much more may be poured.</summary>
/// <remarks>What is refused or not understood is asked again; the account so far is kept. The end of the input ends the questions.</remarks>
internal sealed partial class OilChangeDialog(TextReader answers, Page page, DisplayUnits units)
{
    private bool _ended;

    internal OilChange Ask(Sump sump, PeriodSinceChange? period)
    {
        page.Line("Amounts such as 5.5 L, 5.5 L 70 C or 6 qt 160 F; levels as a share of the range between the marks, such as 0.6 or 60 %.");
        page.Line("Nothing but Enter: not read, no more, done. The engine's own manual comes first; hot oil burns.");
        OilChange change = Until(
            "The level on the stick, before any start",
            answer => answer.Length == 0 ? OilChange.BeginWithoutReading(sump) : Reading(answer) is DipstickReading before ? OilChange.Begin(sump, before) : null);
        change = period is null ? change : Told(change, change.Since(period));
        change = Until(
            "How the oil looks (usual, milky, water-below, smells-of-fuel, metal-in-it)",
            answer => answer.Length == 0 ? change : Look(answer) is OilAppearance look ? Told(change, change.Looked(look)) : null);
        change = Drains(change);
        change = Filter(change);
        return Pours(change);
    }

    private OilChange Drains(OilChange change)
    {
        bool more = true;
        while (more)
        {
            change = Until(
                "Drained (put 'extractor' before it when it was drawn out)",
                answer =>
                {
                    bool drawn = answer.StartsWith("extractor ", StringComparison.OrdinalIgnoreCase);
                    more = answer.Length > 0;
                    return !more ? change
                        : Amount(drawn ? answer["extractor ".Length..] : answer) is MeasuredVolume amount
                            ? Told(change, change.Drained(amount, drawn ? DrainMethod.Extractor : DrainMethod.DrainPlug))
                        : null;
                });
        }

        return change;
    }

    private OilChange Filter(OilChange change)
    {
        change = Until("The filter: kept, changed, or emptied (changed, and emptied into the measure)", answer => answer switch
        {
            "" => change,
            "kept" => Told(change, change.FilterKept()),
            "changed" => Told(change, change.FilterChanged(oldEmptiedIntoMeasure: false)),
            "emptied" => Told(change, change.FilterChanged(oldEmptiedIntoMeasure: true)),
            _ => null,
        });
        return change.Step != OilChangeStep.FilterChanged ? change : Until(
            "Poured into the new filter before it went on",
            answer => answer.Length == 0 ? change : Amount(answer) is MeasuredVolume primed ? Told(change, change.FilterPrimed(primed)) : null);
    }

    private OilChange Pours(OilChange change)
    {
        OilChange first = change;
        bool more = true;
        while (more)
        {
            page.Line($"  Next: {BalanceCommand.Next(change, units)}");
            change = Until("Poured, or: ran, read 0.4, drew 0.2 L, back", answer =>
            {
                more = answer.Length > 0;
                string[] words = answer.Split(' ', 2);
                return !more ? change : (words[0], words.ElementAtOrDefault(1)) switch
                {
                    ("ran", null) => Told(change, change.Ran()),
                    ("back", null) => ReferenceEquals(change, first) ? change : change.Previous!,
                    ("read", string level) => Reading(level) is DipstickReading reading ? Told(change, change.Settled(reading)) : null,
                    ("drew", string drawn) => Amount(drawn) is MeasuredVolume amount ? Told(change, change.DrawnOff(amount)) : null,
                    ("poured", string poured) => Amount(poured) is MeasuredVolume amount ? Told(change, change.Poured(amount)) : null,
                    _ => Amount(answer) is MeasuredVolume amount ? Told(change, change.Poured(amount)) : null,
                };
            });
        }

        return change;
    }

    private OilChange Until(string question, Func<string, OilChange?> understood)
    {
        while (true)
        {
            page.Line($"{question}:");
            string? line = _ended ? null : answers.ReadLine();
            _ended |= line is null;
            if (understood((line ?? "").Trim()) is OilChange change)
            {
                return change;
            }

            page.Line($"  '{line}' was not understood.");
        }
    }

    /// <summary>The account with an event, or as it was when the event is refused.</summary>
    private OilChange Told(OilChange before, OilChange after)
    {
        BalanceCommand.Event(page, after, units);
        return after.IsRefused ? before : after;
    }

    private static DipstickReading? Reading(string text)
    {
        bool percent = text.EndsWith('%');
        return Number(percent ? text[..^1].TrimEnd() : text) is double value && (percent ? value / 100 : value) is >= -5 and <= 10
            ? DipstickReading.OfRange(percent ? value / 100 : value)
            : null;
    }

    private static OilAppearance? Look(string text)
    {
        foreach (OilAppearance look in Enum.GetValues<OilAppearance>())
        {
            if (look.ToString().Equals(text.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase))
            {
                return look;
            }
        }

        return null;
    }

    private MeasuredVolume? Amount(string text)
    {
        Match match = AmountPattern().Match(text);
        if (!match.Success || Number(match.Groups["volume"].Value) is not double amount)
        {
            return null;
        }

        bool us = units == DisplayUnits.UsCustomary;
        Volume volume = match.Groups["unit"].Value.ToUpperInvariant() switch
        {
            "L" => Volume.FromLiters(amount),
            "ML" => Volume.FromMilliliters(amount),
            "QT" => Volume.FromUsQuarts(amount),
            "GAL" => Volume.FromUsGallons(amount),
            _ => us ? Volume.FromUsQuarts(amount) : Volume.FromLiters(amount),
        };
        Temperature? temperature = Number(match.Groups["heat"].Value) is not double heat ? null
            : match.Groups["scale"].Value is "F" or "f" ? Temperature.FromDegreesFahrenheit(heat)
            : Temperature.FromDegreesCelsius(heat);
        return volume.Liters <= 1000 && temperature is null or { DegreesCelsius: >= -60 and <= 200 }
            ? MeasuringVessel.WorkshopJug.Read(volume, temperature)
            : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : null;

    [GeneratedRegex(@"^(?<volume>\d+(\.\d+)?)\s*(?<unit>L|mL|qt|gal)?(\s+(at\s+)?(?<heat>-?\d+(\.\d+)?)\s*°?(?<scale>[CF]))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AmountPattern();
}
