using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Judges where the arm stands: reach, dead points, authority and what is left for wear.</summary>
internal sealed class TensionerFindings(TensionerCheck check, double uncertaintyMm, BeltCheckLimits limits)
{
    private readonly string _subject =
        check.Tensioner.PulleyName == "tensioner" ? "tensioner" : $"tensioner '{check.Tensioner.PulleyName}'";
    private readonly List<Finding> _findings = [];

    internal IReadOnlyList<Finding> List()
    {
        AddReach();
        foreach (double degrees in check.DeadPointsDegrees)
        {
            Add(TensionerRules.DeadPoint, Figure.Of("angle", degrees, FigureUnit.Degree));
        }

        if (check.Arm.IsKnown)
        {
            AddArm(check.Arm.Value);
        }

        return _findings.AsReadOnly();
    }

    private void AddReach()
    {
        Figure belt = Mm("belt", check.LengthMm);
        if (!check.Usable().Any())
        {
            if (check.HasStretches)
            {
                AddWrongSide();
            }

            return;
        }

        double shortest = Canonical.Millimeters(check.Shortest.Value);
        double longest = Canonical.Millimeters(check.Longest.Value);
        double over = check.LengthMm - longest;
        double under = shortest - check.LengthMm;
        if (Math.Abs(over) < uncertaintyMm || Math.Abs(under) < uncertaintyMm)
        {
            Add(BeltRules.LengthAtLimit, belt, Mm("shortest", shortest), Mm("longest", longest), Mm("uncertainty", uncertaintyMm));
        }
        else if (over > 0)
        {
            Add(BeltRules.TooLong, belt, Mm("longest", longest), Mm("difference", over));
        }
        else if (under > 0)
        {
            Add(BeltRules.TooShort, belt, Mm("shortest", shortest), Mm("difference", under));
        }
        else if (!check.Arm.IsKnown)
        {
            Add(TensionerRules.NoArmPosition, belt);
        }

        AddWrongSide();
    }

    private void AddWrongSide()
    {
        ArmPosition? wrong = check.Positions.FirstOrDefault(position => !position.IsTightenedBySpring);
        if (wrong is null)
        {
            return;
        }

        if (check.Arm.IsKnown)
        {
            Add(
                TensionerRules.TwoPositions,
                Figure.Of("angle", check.Arm.Value.ArmDegrees, FigureUnit.Degree),
                Figure.Of("other", wrong.ArmDegrees, FigureUnit.Degree));
        }
        else
        {
            Add(TensionerRules.SpringSlackens, Figure.Of("angle", wrong.ArmDegrees, FigureUnit.Degree));
        }
    }

    private void AddArm(ArmPosition arm)
    {
        double takeUp = Math.Abs(arm.TakeUpMmPerDegree);
        if (takeUp < limits.LeastTakeUpMmPerDegree)
        {
            Add(
                TensionerRules.LittleTakeUp,
                Figure.Of("take-up", takeUp, FigureUnit.MillimeterPerDegree),
                Figure.Of("least", limits.LeastTakeUpMmPerDegree, FigureUnit.MillimeterPerDegree));
        }

        double left = Canonical.Millimeters(check.TakeUpLeft.Value);
        double needed = check.LengthMm * limits.StretchFraction;
        if (check.Tensioner.IsAutomatic && left < needed)
        {
            Add(TensionerRules.WearAllowance, Mm("left", left), Mm("needed", needed));
        }
    }

    private void Add(FindingRule rule, params Figure[] figures) => _findings.Add(rule.On(_subject, figures));

    private static Figure Mm(string name, double mm) => Figure.Of(name, mm, FigureUnit.Millimeter);
}
