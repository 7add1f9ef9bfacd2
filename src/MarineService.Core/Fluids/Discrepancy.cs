namespace MarineService.Core.Fluids;

/// <summary>Something in the account that does not add up: the finding, what it is likely to be, and what to look at next.</summary>
public sealed class Discrepancy
{
    private static readonly Dictionary<FindingRule, (string[] Causes, string[] Look)> Meanings = new()
    {
        [OilChangeRules.DrainShort] = Short,
        [OilChangeRules.DrainShortDoubtful] = Short,
        [OilChangeRules.DrainSurplus] = Surplus,
        [OilChangeRules.DrainSurplusDoubtful] = Surplus,
        [OilChangeRules.FillShort] = FilledShort,
        [OilChangeRules.FillShortDoubtful] = FilledShort,
        [OilChangeRules.FillSurplus] = FilledLong,
        [OilChangeRules.FillSurplusDoubtful] = FilledLong,
        [OilChangeRules.GainedVolume] = Gained,
        [OilChangeRules.GainedVolumeDoubtful] = Gained,
        [OilChangeRules.AboveFull] = TooHigh,
        [OilChangeRules.AboveFullInsideNoise] = TooHigh,
        [OilChangeRules.BelowAdd] = TooLow,
        [OilChangeRules.BelowAddInsideNoise] = TooLow,
        [OilChangeRules.NotFullChange] = NotFull,
        [OilChangeRules.NotFullChangeInsideNoise] = NotFull,
    };

    private Discrepancy(Finding finding, IReadOnlyList<string> causes, IReadOnlyList<string> look) =>
        (Finding, LikelyCauses, LookNext) = (finding, causes, look);

    /// <summary>What was found, how much it matters, and its figures.</summary>
    public Finding Finding { get; }

    /// <summary>What it is likely to be, likeliest first; common practice.</summary>
    public IReadOnlyList<string> LikelyCauses { get; }

    /// <summary>What to look at next, quickest first; common practice.</summary>
    public IReadOnlyList<string> LookNext { get; }

    private static (string[] Causes, string[] Look) Short =>
    (
        ["The oil was cold and thick, and is still coming.", "The hose or tube does not reach the lowest point.", "The boat lies so that the drain is not the lowest point.", "The level before was read too high.", "Some of it missed the measure."],
        ["Whether it still drips.", "How the tube or the boat lies.", "The drain again, warm."]
    );

    private static (string[] Causes, string[] Look) Surplus =>
    (
        ["The level before was read too low, or was above full.", "Water in the oil.", "Fuel in the oil.", "The measure was read wrong, or the oil was hotter than written down."],
        ["The bottom of the drain pan after an hour's standing.", "The smell.", "A sample.", "The coolant level."]
    );

    private static (string[] Causes, string[] Look) FilledShort =>
    (
        ["The level was read before all had run down.", "The boat did not lie level.", "The drain was measured too high.", "More oil was left inside than the account knows."],
        ["The stick again after ten minutes.", "How the boat lies.", "The measures used."]
    );

    private static (string[] Causes, string[] Look) FilledLong =>
    (
        ["The filter or a cooler is still filling.", "A leak at the filter, the drain plug or a hose.", "The drain was measured too low.", "The level was read before all had run down."],
        ["The bilge under the engine.", "The filter, dry all round.", "The drain plug.", "The stick again after a run."]
    );

    private static (string[] Causes, string[] Look) Gained =>
    (
        ["Water from outside: exhaust, raw-water side, a flooded bilge.", "Coolant: head gasket, cooler, block.", "Fuel: injectors, lift pump, long idling.", "A top-up that was not written down, or the last level read too low."],
        ["The stick and the filler cap for milky oil.", "The coolant level.", "The smell.", "A sample, before the oil is thrown away."]
    );

    private static (string[] Causes, string[] Look) TooHigh =>
    (
        ["Poured by the book and not by the drain.", "Oil was left inside.", "Read before all had run down.", "Water or fuel is coming in."],
        ["The stick again, settled and level.", "How much to draw off."]
    );

    private static (string[] Causes, string[] Look) TooLow =>
    (
        ["The new filter has taken its share.", "Not all was poured yet.", "A leak at the filter or the drain plug."],
        ["The filter and the drain plug.", "The bilge.", "The stick again after the next pour."]
    );

    private static (string[] Causes, string[] Look) NotFull =>
    (
        ["The extractor leaves a residual.", "The oil was cold.", "The old filter stayed on."],
        ["What the extractor leaves, measured once by the drain plug."]
    );

    /// <summary>The finding's text in metric units.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Finding.ToString();

    internal static Discrepancy Of(Finding finding) =>
        Meanings.TryGetValue(finding.Rule, out (string[] Causes, string[] Look) meaning)
            ? new(finding, Array.AsReadOnly(meaning.Causes), Array.AsReadOnly(meaning.Look))
            : new(finding, [], []);
}
