using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>The checks while a new impeller goes in; what was not recorded is found missing.</summary>
/// <remarks>Seacock shut, key in the pocket, belt off where it is in the way. Never changes: each check gives a new fitting.</remarks>
public sealed class ImpellerFitting
{
    private readonly Sense? _lean;
    private readonly Sense? _oldLean;
    private readonly bool? _engaged;
    private readonly ImpellerLubricant? _lubricant;
    private readonly CoverGasket? _gasket;
    private readonly IReadOnlyList<PumpPart>? _worn;

    private ImpellerFitting(
        Impeller impeller, Sense? lean, Sense? oldLean, bool? engaged, ImpellerLubricant? lubricant, CoverGasket? gasket, IReadOnlyList<PumpPart>? worn) =>
        (Impeller, _lean, _oldLean, _engaged, _lubricant, _gasket, _worn) = (impeller, lean, oldLean, engaged, lubricant, gasket, worn);

    /// <summary>The impeller.</summary>
    public Impeller Impeller { get; }

    /// <summary>What was found, and what was not recorded.</summary>
    public IReadOnlyList<Finding> Findings => Array.AsReadOnly<Finding>([.. Judge()]);

    /// <summary>True when everything was recorded and nothing must be put right.</summary>
    public bool IsProved => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>Begins the checks.</summary>
    /// <param name="impeller">What goes in, with the pump's rotation.</param>
    /// <returns>A fitting without checks.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="impeller"/> is null.</exception>
    public static ImpellerFitting Of(Impeller impeller) => new(Guard.NotNull(impeller), null, null, null, null, null, null);

    /// <summary>Which way the tips of the new vanes lean, seen from the cover.</summary>
    /// <param name="tips">From the hub outwards.</param>
    /// <param name="oldTips">Which way the old ones leaned before they came out; null when nobody looked.</param>
    /// <returns>A new fitting.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not defined.</exception>
    public ImpellerFitting WithTipsLeaning(Sense tips, Sense? oldTips = null) =>
        new(Impeller, Guard.Defined(tips), oldTips is Sense old ? Guard.Defined(old, nameof(oldTips)) : null, _engaged, _lubricant, _gasket, _worn);

    /// <summary>Whether key, splines or pin hold the hub.</summary>
    /// <param name="engaged">True when they do.</param>
    /// <returns>A new fitting.</returns>
    public ImpellerFitting WithHubEngaged(bool engaged) => new(Impeller, _lean, _oldLean, engaged, _lubricant, _gasket, _worn);

    /// <summary>What the impeller was smeared with.</summary>
    /// <param name="lubricant">The lubricant.</param>
    /// <returns>A new fitting.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lubricant"/> is not a defined value.</exception>
    public ImpellerFitting WithLubricant(ImpellerLubricant lubricant) =>
        new(Impeller, _lean, _oldLean, _engaged, Guard.Defined(lubricant), _gasket, _worn);

    /// <summary>What the cover closes on.</summary>
    /// <param name="gasket">The gasket.</param>
    /// <returns>A new fitting.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gasket"/> is not a defined value.</exception>
    public ImpellerFitting WithGasket(CoverGasket gasket) => new(Impeller, _lean, _oldLean, _engaged, _lubricant, Guard.Defined(gasket), _worn);

    /// <summary>Cam, wear plate, cover, seal and shaft were looked at.</summary>
    /// <param name="worn">Those that are worn; none when all are good.</param>
    /// <returns>A new fitting.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="worn"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not defined.</exception>
    public ImpellerFitting WithPumpLookedAt(params PumpPart[] worn)
    {
        foreach (PumpPart part in Guard.NotNull(worn))
        {
            Guard.Defined(part, nameof(worn));
        }

        return new(Impeller, _lean, _oldLean, _engaged, _lubricant, _gasket, Array.AsReadOnly<PumpPart>([.. worn.Distinct()]));
    }

    private IEnumerable<Finding> Judge()
    {
        foreach (Finding finding in Bend())
        {
            yield return finding;
        }

        if (_engaged is not true)
        {
            yield return _engaged is null ? Missing("key, splines or pin engaged") : ImpellerRules.KeyMissing.On("impeller");
        }

        Finding? smeared = _lubricant switch
        {
            null => Missing("lubricant"),
            ImpellerLubricant.None => ImpellerRules.Unlubricated.On("impeller"),
            ImpellerLubricant.MineralOilOrGrease when Impeller.Rubber == ImpellerRubber.Nitrile => ImpellerRules.LubricantBorne.On("impeller"),
            ImpellerLubricant.MineralOilOrGrease => ImpellerRules.LubricantHarms.On("impeller", Figure.Of("rubber", Word(Impeller.Rubber))),
            _ => null,
        };
        if (smeared is not null)
        {
            yield return smeared;
        }

        if (_gasket is not CoverGasket.New)
        {
            yield return _gasket is CoverGasket gasket
                ? ImpellerRules.GasketNotNew.On("pump cover", Figure.Of("gasket", Word(gasket)))
                : Missing("gasket or O-ring");
        }

        if (_worn is null)
        {
            yield return Missing("cam, wear plate, cover, seal and shaft looked at");
            yield break;
        }

        foreach (PumpPart part in _worn)
        {
            yield return ImpellerRules.PumpWorn.On("raw-water pump", Figure.Of("part", Word(part)));
        }
    }

    private IEnumerable<Finding> Bend()
    {
        if (_lean is not Sense lean)
        {
            yield return Missing("which way the tips lean");
            yield break;
        }

        if (Impeller.Rotation is not PumpRotation rotation)
        {
            yield return ImpellerRules.RotationNotKnown.On("impeller");
        }
        else if (lean != rotation.TipsLeanFromCover)
        {
            yield return ImpellerRules.BentWrong.On(
                "impeller",
                Figure.Of("lean", PumpRotation.Word(lean)),
                Figure.Of("rotation", rotation.ToString()),
                Figure.Of("wanted", PumpRotation.Word(rotation.TipsLeanFromCover)));
        }

        if (_oldLean is Sense old && old != lean)
        {
            yield return ImpellerRules.BentUnlikeOld.On(
                "impeller", Figure.Of("old", PumpRotation.Word(old)), Figure.Of("lean", PumpRotation.Word(lean)));
        }
    }

    private static Finding Missing(string check) => ImpellerRules.NotRecorded.On("impeller", Figure.Of("check", check));

    private static string Word(ImpellerRubber rubber) => rubber switch
    {
        ImpellerRubber.NotStated => "a rubber that is not stated",
        ImpellerRubber.NaturalRubber => "natural rubber",
        ImpellerRubber.EthylenePropylene => "ethylene-propylene rubber",
        ImpellerRubber.Polyurethane => "polyurethane",
        ImpellerRubber.Nitrile => "nitrile rubber",
        _ => "chloroprene rubber",
    };

    private static string Word(CoverGasket gasket) => gasket switch
    {
        CoverGasket.Reused => "the old gasket",
        CoverGasket.SealantAlone => "sealant alone",
        _ => "no gasket",
    };

    private static string Word(PumpPart part) => part switch
    {
        PumpPart.Cover => "the cover is grooved",
        PumpPart.WearPlate => "the wear plate is grooved",
        PumpPart.Cam => "the cam is worn",
        PumpPart.Seal => "the seal weeps",
        _ => "the shaft has play",
    };
}
