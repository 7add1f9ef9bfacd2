using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>The verdict on one grade: accepted, marginal or refused, the limit that decided, and the losing limits beside it.</summary>
public sealed class GradeVerdict
{
    private readonly GradeLimits _limits;
    private readonly OilConditions _conditions;
    private readonly double _startCelsius;

    internal GradeVerdict(GradeLimits limits, OilConditions conditions, double startCelsius)
    {
        (_limits, _conditions, _startCelsius) = (limits, conditions, startCelsius);
        Limits = limits.All(startCelsius);
        DecidedBy = limits.Deciding(startCelsius);
        Suitability = limits.At(startCelsius);
    }

    /// <summary>The grade.</summary>
    public SaeGrade Grade => _limits.Grade;

    /// <summary>The grade as a label writes it.</summary>
    public string Designation => Grade.Designation;

    /// <summary>True when the engine's maker permits the grade; a grade that is not permitted is refused whatever the weather.</summary>
    public bool IsPermitted => _limits.IsPermitted;

    /// <summary>The maker's preference, 1 for the first choice.</summary>
    public int MakersPreference => _limits.Preference;

    /// <summary>The verdict.</summary>
    public Suitability Suitability { get; }

    /// <summary>The temperature from which the grade is accepted.</summary>
    public Temperature Floor => Temperature.FromDegreesCelsius(_limits.FloorCelsius);

    /// <summary>How far the expected start is above the floor; negative when below.</summary>
    public TemperatureDelta ColdMargin => TemperatureDelta.FromKelvins(MarginKelvins);

    /// <summary>How far the hottest ambient is below the maker's limit; not known without both.</summary>
    public Answer<TemperatureDelta> HotMargin =>
        _limits.Permitted.HottestCelsius is not double hottest
            ? Answer.NotKnown<TemperatureDelta>($"The engine maker's highest ambient for {Designation}.")
            : _conditions.HottestCelsius is not double expected
            ? Answer.NotKnown<TemperatureDelta>("The hottest ambient that is expected.")
            : Answer.Known(TemperatureDelta.FromKelvins(OilGuard.Round(hottest - expected)));

    /// <summary>The limit that decided the verdict.</summary>
    public TemperatureLimit DecidedBy { get; }

    /// <summary>Every limit of the grade, the deciding one and the losing ones.</summary>
    public IReadOnlyList<TemperatureLimit> Limits { get; }

    internal double FloorCelsius => _limits.FloorCelsius;

    internal double MarginKelvins => OilGuard.Round(_startCelsius - _limits.FloorCelsius);

    internal bool IsTooHot => _limits.IsTooHot;

    internal bool IsFloorKnown => _limits.IsFloorKnown;

    internal bool IsPumpable => _limits.IsPumpable(_startCelsius);

    /// <summary>The verdict, the deciding limit, the margins, the losing limits, and the sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Designation} {Words(Suitability)}: {Reason(units)}.");
        lines.Add("start", FigureUnit.DegreeCelsius.Write(_startCelsius, units))
            .Add("decided by", DecidedBy.ToString(units))
            .Add("cold margin", FigureUnit.Kelvin.Write(MarginKelvins, units))
            .Add("hot margin", HotMargin.IsKnown ? FigureUnit.Kelvin.Write(HotMargin.Value.Kelvins, units) : HotMargin.ToString());
        foreach (TemperatureLimit limit in Limits.Where(limit => limit != DecidedBy))
        {
            string margin = limit.MarginKelvins is double kelvins ? $", {FigureUnit.Kelvin.Write(kelvins, units)} to spare" : string.Empty;
            lines.Add(limit.TakesPart ? "also" : "shown only", $"{limit.ToString(units)}{margin} ({limit.Citation})");
        }

        return lines.Build([.. new[] { DecidedBy.Citation, OilSources.J300, Citation.ProjectChoice }.Distinct()]);
    }

    /// <summary>Grade, verdict and reason, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    internal static string Words(Suitability suitability) => suitability switch
    {
        Suitability.Accepted => "accepted",
        Suitability.Marginal => "marginal",
        _ => "refused",
    };

    /// <summary>The reason in a few words, without a full stop.</summary>
    internal string Reason(DisplayUnits units)
    {
        if (!IsPermitted)
        {
            return "not on the maker's list";
        }

        double decided = DecidedBy.MarginKelvins ?? MarginKelvins;
        string distance = $"{FigureUnit.Kelvin.Write(Math.Abs(decided), units)} {(decided < 0 ? "outside" : "inside")}";
        return IsFloorKnown || Suitability == Suitability.Refused
            ? $"{distance} {DecidedBy.ToString(units)}"
            : $"no cold limit is known for it, and no more than the customary {FigureUnit.DegreeCelsius.Write(FloorCelsius, units)} of a thinner grade; ask the maker";
    }
}
