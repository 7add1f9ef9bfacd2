using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>A raw-water pump that ran without water.</summary>
/// <remarks>Accounts differ so widely that any known dry run asks for a look now, however short it was.</remarks>
public static class DryRun
{
    /// <summary>The word for it in a log's events and in the tasks that it makes due.</summary>
    public const string EventKind = "dry-run";

    /// <summary>What a dry run asks for.</summary>
    /// <param name="lasted">How long it lasted, from 0 s to 24 h; null when nobody knows.</param>
    /// <returns>The finding.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lasted"/> is outside its range.</exception>
    public static Finding Judge(Duration? lasted) => ImpellerRules.RanDry.On(
        "raw-water pump",
        lasted is Duration time
            ? Figure.Of("time", Guard.InRange(Canonical.Seconds(time), 0, 86_400, "s", nameof(lasted)), FigureUnit.Second)
            : Figure.Of("time", "nobody knows how long"));
}
