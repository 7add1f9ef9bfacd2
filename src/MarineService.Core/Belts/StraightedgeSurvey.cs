using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Straightedge readings on one drive: where each pulley stands along the crankshaft, and which one to move.</summary>
/// <remarks>Method: common practice with a straightedge. A lean shows only along the straightedge.</remarks>
public sealed class StraightedgeSurvey
{
    private readonly List<Pulley> _pulleys = [];

    private StraightedgeSurvey(BeltDrive drive, string reference, double faceToMiddleMm, IReadOnlyList<StraightedgeReading> readings)
    {
        (ReferencePulley, Readings) = (reference, readings);
        Pulley from = drive.Find(reference)!;
        BeltDrive placed = drive.WithPulley(from.WithAxialPosition(-faceToMiddleMm));
        _pulleys.Add(placed.Find(reference)!);
        foreach (StraightedgeReading reading in readings)
        {
            Pulley at = Placed(drive.Find(reading.PulleyName)!, from, reading);
            placed = placed.WithPulley(at);
            _pulleys.Add(at);
        }

        Drive = placed;
    }

    /// <summary>The drive with the positions and leans that the readings give.</summary>
    public BeltDrive Drive { get; }

    /// <summary>The pulley whose face the straightedge lay on.</summary>
    public string ReferencePulley { get; }

    /// <summary>The readings.</summary>
    public IReadOnlyList<StraightedgeReading> Readings { get; }

    /// <summary>Takes the readings of one session, all against one reference pulley.</summary>
    /// <param name="drive">The drive that was measured.</param>
    /// <param name="referencePulley">The pulley whose face the straightedge lay on.</param>
    /// <param name="faceToMiddleMm">From its face to the middle of its rim; from 0 to 300 mm.</param>
    /// <param name="readings">One for each other pulley that was measured.</param>
    /// <returns>The survey.</returns>
    /// <exception cref="ArgumentNullException">An argument or a reading is null.</exception>
    /// <exception cref="ArgumentException">A pulley is not in the drive, is read twice, is the reference itself, or leans absurdly.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="faceToMiddleMm"/> is outside its range.</exception>
    public static StraightedgeSurvey Of(BeltDrive drive, string referencePulley, double faceToMiddleMm, params StraightedgeReading[] readings)
    {
        Guard.NotNull(drive);
        IReadOnlyList<StraightedgeReading> copy = Guard.Items(readings);
        if (drive.Find(Guard.NotBlank(referencePulley)) is null)
        {
            throw new ArgumentException($"The drive has no pulley '{referencePulley}'.", nameof(referencePulley));
        }

        List<int> seen = [drive.IndexOf(referencePulley)];
        foreach (StraightedgeReading reading in copy)
        {
            int index = drive.IndexOf(reading.PulleyName);
            if (index < 0 || seen.Contains(index))
            {
                throw new ArgumentException(
                    index < 0 ? $"The drive has no pulley '{reading.PulleyName}'." : $"Pulley '{reading.PulleyName}' is read twice.", nameof(readings));
            }

            if (Math.Abs(Lean(drive.Pulleys[index], reading)) > Pulley.SteepestLeanRatio)
            {
                throw new ArgumentException($"The gaps at '{reading.PulleyName}' would lean it by more than one in five.", nameof(readings));
            }

            seen.Add(index);
        }

        return new(drive, referencePulley, Guard.InRange(faceToMiddleMm, 0, Pulley.WidestMm, "mm"), copy);
    }

    /// <summary>Which pulleys to move so that all that were measured stand in one plane, the fewest that will do.</summary>
    /// <remarks>The plane is the one that most of them share within the tolerance already; the crank's when it is a draw.</remarks>
    /// <param name="toleranceMm">How far from the plane still counts as in it; above 0 and up to 20 mm. Half a millimetre is usual.</param>
    /// <returns>The moves, in the order of the readings; empty when all are in line.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="toleranceMm"/> is outside its range.</exception>
    public IReadOnlyList<PulleyMove> Moves(double toleranceMm)
    {
        Guard.InRange(Guard.Positive(toleranceMm, "mm"), 0, 20, "mm", nameof(toleranceMm));
        double plane = _pulleys
            .OrderByDescending(pulley => _pulleys.Count(other => IsInPlane(other, Height(pulley), toleranceMm)))
            .ThenBy(pulley => string.Equals(pulley.Name, Drive.Crank.Name, StringComparison.OrdinalIgnoreCase) ? 0 : 1)
            .Select(Height)
            .First();
        return
        [
            .. _pulleys
                .Where(pulley => !IsInPlane(pulley, plane, toleranceMm))
                .Select(pulley => new PulleyMove(
                    pulley.Name, plane - Height(pulley), string.Equals(pulley.Name, Drive.Crank.Name, StringComparison.OrdinalIgnoreCase))),
        ];
    }

    private static double Height(Pulley pulley) => pulley.AxialPositionMm!.Value;

    private static bool IsInPlane(Pulley pulley, double planeMm, double toleranceMm) => Math.Abs(Height(pulley) - planeMm) <= toleranceMm;

    /// <summary>The straightedge lies along the line of centres; a face that falls away from it with distance leans towards the engine.</summary>
    private static Pulley Placed(Pulley pulley, Pulley reference, StraightedgeReading reading)
    {
        double dx = pulley.XMm - reference.XMm;
        double dy = pulley.YMm - reference.YMm;
        double distance = Math.Sqrt((dx * dx) + (dy * dy));
        double middle = -((reading.NearGapMm + reading.FarGapMm) / 2) - reading.FaceToMiddleMm;
        double lean = Lean(pulley, reading);
        return distance > 0
            ? pulley.WithAxialPosition(middle, lean * dx / distance, lean * dy / distance)
            : pulley.WithAxialPosition(middle);
    }

    private static double Lean(Pulley pulley, StraightedgeReading reading) => (reading.NearGapMm - reading.FarGapMm) / (2 * pulley.RimRadiusMm);
}
