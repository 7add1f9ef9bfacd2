namespace MarineService.Core.Fluids;

/// <summary>Rules about the events and the verdicts of an oil change. Codes FLUID-001 to FLUID-039.</summary>
internal static class OilChangeRules
{
    private const string ReadAgain = "The account stands as before. Read the stick again, as it wants to be read.";
    private const string SayAgain = "The account stands as before. Check the figure and its unit, then enter it again.";

    // Events that are refused.
    internal static readonly FindingRule TemperatureOutside = new(
        "FLUID-001", Severity.Advice, "Volumes are measured between -50 and 150 °C",
        "an oil temperature of {temperature} is outside what the volume correction covers",
        OilDensity.Source, SayAgain);

    internal static readonly FindingRule NotSettled = new(
        "FLUID-002", Severity.Advice, "The oil settles before the stick is read",
        "read after {waited}, this oil needs {needed}; some of it is still on its way down",
        Citation.PracticeDescribedIn("general articles on dipstick reading"), "The account stands as before. Wait, wipe the stick, read again.");

    internal static readonly FindingRule WrongSeating = new(
        "FLUID-003", Severity.Advice, "The stick is read the way its marks were made",
        "the stick was {was}, its marks are true when it is {wanted}",
        Citation.CommonPractice, ReadAgain);

    internal static readonly FindingRule WrongAttitude = new(
        "FLUID-004", Severity.Advice, "The boat lies as the marks expect when the stick is read",
        "the boat was {was}, the marks are true when she is {wanted}",
        Citation.CommonPractice, "The account stands as before. Read again in that attitude, or give the tilt and the sump's shape.");

    internal static readonly FindingRule TiltNotCorrectable = new(
        "FLUID-005", Severity.Advice, "A tilt can be corrected only while the oil meets all four walls",
        "the reading was taken with the stern {pitch} and the starboard side {roll} down, which cannot be corrected here",
        SumpShape.Source, "The account stands as before. Level the boat and read again, or give the sump's shape.");

    internal static readonly FindingRule DrainTooLarge = new(
        "FLUID-006", Severity.Advice, "No more comes out than an engine can hold",
        "{drained} drained is more than twice the {held} that the engine holds",
        Citation.ProjectChoice, SayAgain);

    internal static readonly FindingRule OutOfOrder = new(
        "FLUID-007", Severity.Advice, "Drain and filter come before the first pour",
        "'{step}' cannot follow what is in the account already",
        Citation.CommonPractice, "The account stands as before. Oil taken out after a pour is 'drawn off'; a second change is an account of its own.");

    internal static readonly FindingRule PrimedTooMuch = new(
        "FLUID-008", Severity.Advice, "A filter is primed with no more than it holds",
        "{primed} was put into a filter that holds {filter}",
        Citation.CommonPractice, SayAgain);

    internal static readonly FindingRule DrawnOffTooMuch = new(
        "FLUID-009", Severity.Advice, "No more is drawn off than is in the sump",
        "{drawn off} was drawn off a sump that holds {held}",
        Citation.CommonPractice, SayAgain);

    // Remarks on events.
    internal static readonly FindingRule TemperatureAssumed = new(
        "FLUID-010", Severity.Advice, "A volume of oil needs its temperature",
        "no oil temperature was taken; {volume} is reckoned at {assumed} give or take {doubt}",
        Citation.ProjectChoice, "Take the temperature: 55 °C more makes oil 4 % larger.");

    internal static readonly FindingRule FilterNotSaid = new(
        "FLUID-011", Severity.Advice, "The account says what became of the filter",
        "oil was poured before it was said whether the filter was changed; the account takes it that the filter stayed on",
        Citation.CommonPractice, "Say so first: a filter left out of the account makes it wrong by the {filter} that it holds.");

    internal static readonly FindingRule AboveFullBefore = new(
        "FLUID-012", Severity.Stop, "The level is at or below full before any start",
        "before the change the level stood {above} above full",
        Citation.CommonPractice, "Do not start the engine to warm the oil. Look for water or fuel first.");

    internal static readonly FindingRule BelowAddBefore = new(
        "FLUID-013", Severity.Stop, "The level is at or above the add mark before any start",
        "before the change the level stood {below} below the add mark",
        Citation.CommonPractice, "Do not start the engine to warm the oil. Look for the leak, or for what it burns.");

    internal static readonly FindingRule MayPassFull = new(
        "FLUID-014", Severity.Act, "No pour risks passing the full mark",
        "after this pour the chance that the level is above full is {chance}, more than the {risk} that was chosen",
        Citation.ProjectChoice, "Pour no more. Run if the filter is new, let it settle, read the stick.");

    internal static readonly FindingRule RanBelowAdd = new(
        "FLUID-015", Severity.Stop, "The engine runs only with oil between the marks",
        "by the account the level was {below} below the add mark when the engine ran",
        Citation.CommonPractice, "Stop the engine. Find out where the oil is before it turns again.");

    internal static readonly FindingRule WaterInOil = new(
        "FLUID-016", Severity.Stop, "There is no water in the oil",
        "the oil looked {look}",
        Citation.CommonPractice,
        "Do not run the engine, and do not crank it before the cylinders are known to be dry. Find the way in: head gasket, riser, cooler, exhaust, flooded bilge.");

    internal static readonly FindingRule FuelInOil = new(
        "FLUID-017", Severity.Act, "There is no fuel in the oil",
        "the oil looked {look}",
        Citation.CommonPractice, "Keep flames away. Send a sample; look at injectors, lift pump and the choke or enrichment.");

    internal static readonly FindingRule MetalInOil = new(
        "FLUID-018", Severity.Act, "There is no metal in the oil",
        "the oil looked {look}",
        Citation.CommonPractice, "Cut the old filter open, keep what is in it, send a sample.");

    // Verdicts.
    internal static readonly FindingRule DrainShort = new(
        "FLUID-020", Severity.Act, "What was drained is what level and capacity promised",
        "drained {measured}, promised {promised}: {missing} too little, {noise}",
        Citation.ProjectChoice, "Look for the oil that is still inside before pouring by the book.");

    internal static readonly FindingRule DrainShortDoubtful = new(
        "FLUID-021", Severity.Advice, "What was drained is what level and capacity promised",
        "drained {measured}, promised {promised}: {missing} too little, {noise}",
        Citation.ProjectChoice, "Let it drip longer, or read on by the stick.");

    internal static readonly FindingRule DrainSurplus = new(
        "FLUID-022", Severity.Act, "What was drained is what level and capacity promised",
        "drained {measured}, promised {promised}: {surplus} too much, {noise}",
        Citation.ProjectChoice, "Keep what came out. Let it stand, look for water at the bottom, send a sample.");

    internal static readonly FindingRule DrainSurplusDoubtful = new(
        "FLUID-023", Severity.Advice, "What was drained is what level and capacity promised",
        "drained {measured}, promised {promised}: {surplus} too much, {noise}",
        Citation.ProjectChoice, "Keep what came out until the level has been proved.");

    internal static readonly FindingRule FillShort = new(
        "FLUID-024", Severity.Act, "What was poured is what left and what the levels explain",
        "poured {measured}, explained {promised}: {missing} too little for the level it gave, {noise}",
        Citation.ProjectChoice, "Level the boat, let it settle, read again before trusting the level.");

    internal static readonly FindingRule FillShortDoubtful = new(
        "FLUID-025", Severity.Advice, "What was poured is what left and what the levels explain",
        "poured {measured}, explained {promised}: {missing} too little for the level it gave, {noise}",
        Citation.ProjectChoice, "Read the stick once more.");

    internal static readonly FindingRule FillSurplus = new(
        "FLUID-026", Severity.Act, "What was poured is what left and what the levels explain",
        "poured {measured}, explained {promised}: {surplus} more than the level shows, {noise}",
        Citation.ProjectChoice, "Look for oil in the bilge and round the filter; make sure the filter is full.");

    internal static readonly FindingRule FillSurplusDoubtful = new(
        "FLUID-027", Severity.Advice, "What was poured is what left and what the levels explain",
        "poured {measured}, explained {promised}: {surplus} more than the level shows, {noise}",
        Citation.ProjectChoice, "Look round the filter and the drain plug; read the stick once more.");

    internal static readonly FindingRule GainedVolume = new(
        "FLUID-028", Severity.Stop, "An engine does not gain oil by itself",
        "{gained} more is in the engine than was left and topped up, {noise}",
        Citation.Derived("the balance of levels and top-ups, corrected for temperature"),
        "Do not run the engine. Water, coolant or fuel has come in, or a top-up was not written down: look, smell, send a sample.");

    internal static readonly FindingRule GainedVolumeDoubtful = new(
        "FLUID-029", Severity.Advice, "An engine does not gain oil by itself",
        "{gained} more seems to be in the engine than was left and topped up, {noise}",
        Citation.ProjectChoice, "Read the stick again; look at the oil for water.");

    internal static readonly FindingRule AboveFull = new(
        "FLUID-030", Severity.Stop, "The level is not above full",
        "the level is {above} above full, {noise}",
        Citation.PracticeDescribedIn("general motoring articles: the crank whips air into the oil, pressure falls, seals leak"),
        "Do not run the engine. Draw off {above}, let it settle, read again.");

    internal static readonly FindingRule AboveFullInsideNoise = new(
        "FLUID-031", Severity.Act, "The level is not above full",
        "the level reads {above} above full, {noise}",
        Citation.ProjectChoice, "Add nothing. Read again; if it still shows above full, draw off.");

    internal static readonly FindingRule BelowAdd = new(
        "FLUID-032", Severity.Stop, "The level is not below the add mark",
        "the level is {below} below the add mark, {noise}",
        Citation.CommonPractice, "Do not run the engine. Pour, settle, read.");

    internal static readonly FindingRule BelowAddInsideNoise = new(
        "FLUID-033", Severity.Act, "The level is not below the add mark",
        "the level reads {below} below the add mark, {noise}",
        Citation.ProjectChoice, "Pour to the target, settle, read.");

    internal static readonly FindingRule NotFullChange = new(
        "FLUID-034", Severity.Act, "A change exchanges at least the full-change fraction",
        "{exchanged} of the oil was exchanged, a full change needs {needed}, {noise}",
        Citation.ProjectChoice, "It does not count as a change. Drain again warm, or reckon the oil's age pro rata.");

    internal static readonly FindingRule NotFullChangeInsideNoise = new(
        "FLUID-035", Severity.Advice, "A change exchanges at least the full-change fraction",
        "{exchanged} of the oil was exchanged, a full change needs {needed}, {noise}",
        Citation.ProjectChoice, "Too close to tell: measure the drain better next time.");

    internal static readonly FindingRule CountsProRata = new(
        "FLUID-036", Severity.Note, "A boat drained by extractor with a declared residual counts pro rata",
        "{exchanged} of the oil was exchanged; the rest keeps its age",
        Citation.ProjectChoice);

    internal static readonly FindingRule FilterNotFilled = new(
        "FLUID-037", Severity.Advice, "A new filter is filled by a run before the last reading",
        "the new filter has yet to take {to take} from the sump",
        Citation.CommonPractice, "Start, idle until the pressure is normal, look for leaks, stop, settle, read, top up.");

    internal static readonly FindingRule ConsumptionAboveUsual = new(
        "FLUID-038", Severity.Act, "Oil consumption lies within what engines use",
        "{rate} L per 100 h is {specific} g/kWh; engines were found to use {least} to {most} g/kWh",
        OilConsumption.BandSource, "Look for smoke, leaks and a blocked breather; have the compression measured.");

    internal static readonly FindingRule ConsumptionRising = new(
        "FLUID-039", Severity.Advice, "Oil consumption stays near the engine's own",
        "{rate} L per 100 h is {times} times the median of the last three changes",
        Citation.ProjectChoice, "Find out what changed: leak, breather, hours at full power, another oil.");
}
