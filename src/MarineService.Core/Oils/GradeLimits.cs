namespace MarineService.Core.Oils;

/// <summary>The limits of one grade for given conditions, worked out once; judging a start is then two comparisons.</summary>
internal sealed class GradeLimits
{
    private readonly OilConditions _conditions;

    internal GradeLimits(PermittedGrade permitted, int index, int preference, bool isPermitted, OilConditions conditions)
    {
        (Permitted, Index, Preference, IsPermitted, _conditions) = (permitted, index, preference, isPermitted, conditions);
        FloorCelsius = double.NegativeInfinity;
        RefusedBelowCelsius = double.NegativeInfinity;
        foreach (TemperatureLimit limit in ColdLimits(null))
        {
            if (!limit.TakesPart)
            {
                continue;
            }

            FloorCelsius = Math.Max(FloorCelsius, limit.Celsius);
            if (Refuses(limit.Kind))
            {
                RefusedBelowCelsius = Math.Max(RefusedBelowCelsius, limit.Celsius);
            }
        }
    }

    internal PermittedGrade Permitted { get; }

    internal SaeGrade Grade => Permitted.Grade;

    internal int Index { get; }

    internal int Preference { get; }

    internal bool IsPermitted { get; }

    /// <summary>Accepted from here.</summary>
    internal double FloorCelsius { get; }

    /// <summary>Refused below here; between it and the floor the verdict is marginal.</summary>
    internal double RefusedBelowCelsius { get; }

    /// <summary>False for the thick grades without W of which only a lower bound of the floor is known.</summary>
    internal bool IsFloorKnown =>
        Grade.Winter is not null || Permitted.ColdestCelsius is not null || CustomaryTable.WithoutWinter(Grade.Hot!).IsKnown;

    internal bool IsTooHot => _conditions.HottestCelsius > Permitted.HottestCelsius;

    internal bool IsPumpable(double startCelsius) => Grade.Winter is null || startCelsius >= Grade.Winter.PumpingCelsius;

    internal Suitability At(double startCelsius) =>
        !IsPermitted || IsTooHot || startCelsius < RefusedBelowCelsius ? Suitability.Refused
        : startCelsius < FloorCelsius || !IsFloorKnown ? Suitability.Marginal
        : Suitability.Accepted;

    /// <summary>Every limit, the ones of the cold first.</summary>
    internal IReadOnlyList<TemperatureLimit> All(double startCelsius)
    {
        List<TemperatureLimit> limits = [.. ColdLimits(startCelsius)];
        if (Permitted.HottestCelsius is double hottest)
        {
            limits.Add(new(TemperatureLimitKind.MakersHottest, hottest, _conditions.HottestCelsius, takesPart: true, Citation.GivenByCaller));
        }

        return limits.AsReadOnly();
    }

    /// <summary>
    /// The limit that the verdict hangs on. Below the pumping temperature that one is named, as the gravest; else the warmest limit that
    /// refuses, or the maker's hottest, or the warmest limit of all, which is the floor.
    /// </summary>
    internal TemperatureLimit Deciding(double startCelsius)
    {
        IReadOnlyList<TemperatureLimit> all = All(startCelsius);
        if (!IsPumpable(startCelsius))
        {
            return all.First(limit => limit.Kind == TemperatureLimitKind.Pumping);
        }

        bool isTooCold = startCelsius < RefusedBelowCelsius;
        if (IsTooHot && !isTooCold)
        {
            return all.First(limit => limit.Kind == TemperatureLimitKind.MakersHottest);
        }

        double deciding = isTooCold ? RefusedBelowCelsius : FloorCelsius;
        return all.First(limit => limit.TakesPart && limit.Celsius == deciding
            && limit.Kind != TemperatureLimitKind.MakersHottest && (!isTooCold || Refuses(limit.Kind)));
    }

    private static bool Refuses(TemperatureLimitKind kind) =>
        kind is TemperatureLimitKind.Cranking or TemperatureLimitKind.Pumping or TemperatureLimitKind.WithoutWinterGrade or TemperatureLimitKind.MakersColdest;

    private IEnumerable<TemperatureLimit> ColdLimits(double? start)
    {
        if (Grade.Winter is SaeWGrade winter)
        {
            yield return new(TemperatureLimitKind.CrankingWithMargin, winter.CrankingCelsius + _conditions.MarginKelvins, start, true, OilSources.J300, _conditions.MarginKelvins);
            yield return new(TemperatureLimitKind.Cranking, winter.CrankingCelsius, start, true, OilSources.J300);
            yield return new(TemperatureLimitKind.Pumping, winter.PumpingCelsius, start, true, OilSources.J300);
            (double chart, Citation source) = CustomaryTable.ChartOf(winter);
            yield return new(TemperatureLimitKind.CustomaryChart, chart, start, true, source);
            if (CustomaryTable.WarmestOf(winter) is (double warmest, Citation from))
            {
                yield return new(TemperatureLimitKind.WarmestPublished, warmest, start, _conditions.Figures == CustomaryFigures.WarmestPublished, from);
            }
        }
        else
        {
            (double customary, _, Citation source) = CustomaryTable.WithoutWinter(Grade.Hot!);
            yield return new(TemperatureLimitKind.WithoutWinterGrade, customary, start, true, source);
        }

        if (Permitted.ColdestCelsius is double coldest)
        {
            yield return new(TemperatureLimitKind.MakersColdest, coldest, start, true, Citation.GivenByCaller);
        }
    }
}
