namespace MarineService.Core.Belts;

/// <summary>The rules of how a belt sits and wears, as seen with the engine stopped. Codes are never reused.</summary>
public static class WearRules
{
    /// <summary>A rib rides outside its groove.</summary>
    public static FindingRule RibOffGroove { get; } = new(
        "BELT-070",
        Severity.Stop,
        "A rib is off its groove",
        "{ribs} ribs off their grooves: the belt shreds itself and takes the cooling water with it",
        Citation.CommonPractice,
        "Release the tensioner and seat every rib in its groove; if it has run so, fit a new belt.");

    /// <summary>Cracks across the ribs.</summary>
    public static FindingRule Cracks { get; } = new(
        "BELT-071",
        Severity.Act,
        "The ribs are cracked",
        "{cracks} cracks in {over} of one rib; {limit} there are enough to replace it",
        Citation.ProjectChoice,
        "Replace the belt.");

    /// <summary>A few cracks across the ribs.</summary>
    public static FindingRule FewCracks { get; } = new(
        "BELT-072",
        Severity.Advice,
        "The ribs begin to crack",
        "{cracks} cracks in {over} of one rib; {limit} there are enough to replace it",
        Citation.ProjectChoice,
        "Look again at the next service, and carry a spare.");

    /// <summary>A piece of rib is missing.</summary>
    public static FindingRule MissingRib { get; } = new(
        "BELT-073",
        Severity.Stop,
        "A piece of rib is missing",
        "{length} of rib is gone: the rest follows",
        Citation.CommonPractice,
        "Fit a new belt, and look for the cause: a stone in a groove, a pulley out of line, a belt off its groove.");

    /// <summary>The ribs are glazed.</summary>
    public static FindingRule Glazed { get; } = new(
        "BELT-074",
        Severity.Act,
        "The belt is glazed",
        "its flanks shine: it has slipped hot",
        Citation.CommonPractice,
        "Replace it, and look for the cause: low tension, a stiff pulley, oil or water.");

    /// <summary>Oil, coolant or grease is on the belt.</summary>
    public static FindingRule Contaminated { get; } = new(
        "BELT-075",
        Severity.Act,
        "The belt is contaminated",
        "{what} is on it: rubber swells and slips",
        Citation.CommonPractice,
        "Stop the leak first, clean the pulleys, then fit a new belt; never dress a belt to keep it quiet.");

    /// <summary>The cord or an edge is frayed.</summary>
    public static FindingRule Frayed { get; } = new(
        "BELT-076",
        Severity.Act,
        "The belt's edge is frayed",
        "cords show at the edge",
        Citation.CommonPractice,
        "Replace it, and check that the pulleys are in line.");

    /// <summary>The ribs are worn past the gauge.</summary>
    public static FindingRule Worn { get; } = new(
        "BELT-077",
        Severity.Act,
        "The ribs are worn",
        "the gauge {reading}: the belt bottoms in its grooves and slips",
        Citation.CommonPractice,
        "Replace the belt.");

    /// <summary>Nobody gauged the ribs of a belt that wears without cracking.</summary>
    public static FindingRule NotGauged { get; } = new(
        "BELT-078",
        Severity.Advice,
        "The ribs were not gauged",
        "this rubber wears without cracking, so a sound look proves nothing",
        Citation.CommonPractice,
        "Lay a rib depth gauge in the grooves.");

    /// <summary>A new belt has run long enough to be looked at again.</summary>
    public static FindingRule NewBeltDue { get; } = new(
        "BELT-079",
        Severity.Act,
        "A new belt is due for its second look",
        "it has run {run} since it was fitted; {recheck} is when to look again",
        Citation.ProjectChoice,
        "Look at seat, arm and tension once more: a new belt beds in.");

    /// <summary>A new belt has yet to be looked at again.</summary>
    public static FindingRule NewBelt { get; } = new(
        "BELT-080",
        Severity.Advice,
        "A new belt wants a second look",
        "it has run {run} since it was fitted; look again at {recheck}",
        Citation.ProjectChoice,
        "Note it in the log.");
}
