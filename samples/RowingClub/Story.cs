using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Cooling;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Oils;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using RowingClub.Commands;
using UnitsNet;

namespace RowingClub;

/// <summary>One day at the Loch Vennery Rowing Club, told from the embedded data as far as the library goes.</summary>
internal static class Story
{
    internal static void Tell(Page page)
    {
        page.Title("Loch Vennery Rowing Club, 12 October 2026");
        page.Line("The season ends, the launches are laid up on the 24th, and frost comes in November.");
        page.Line("What does each launch need before then?");
        page.Line();
        IReadOnlyList<NightMinimum> nights = NightsFile.Read("nights.csv", Launch.Embedded("nights.csv"));
        IReadOnlyList<Launch> launches = Launch.Club(null);
        foreach (Launch launch in launches)
        {
            DueList due = launch.Log.DueList(launch.Boat, launch.Today);
            page.Title($"{launch.Boat}: {DueCommand.Summary(due)}");
            foreach (TaskDue task in due.MostUrgentFirst.Where(task => task.Status >= DueStatus.DueSoon))
            {
                page.Task(task);
            }

            foreach (Finding finding in due.Findings.Where(finding => finding.Severity >= Severity.Act))
            {
                page.Finding(finding, DisplayUnits.Metric);
            }

            Oil(page, launch, nights);
            Belt(page, launch);
            Change(page, launch);
            Water(page, launch);
            Winter(page, launch, nights);
            page.Line();
        }

        page.Line("Why: RowingClub due Curlew. The day's work: RowingClub card Curlew. Which days: RowingClub visits. The winter: RowingClub layup.");
        page.Line("A boat of your own: RowingClub new.");
        page.Line("The library advises and certifies nothing. The engine's own manual, local codes and licensed practice come first.");
        Sheet(page, launches[0], nights);
    }

    // What Kerr pins to the wall of the boat house before he starts.
    private static void Sheet(Page page, Launch launch, IReadOnlyList<NightMinimum> nights)
    {
        FittedEngine engine = launch.Boat.Engines[0];
        Answer<JobCard> card = JobCard.Prepare(launch.Boat, launch.Log, launch.Today, SheetCommand.ClubWeather(OilCommand.SeasonAhead(launch, engine, nights)));
        page.Line($"The sheet for {launch.Boat}, to be opened in a browser: {new SheetFolder(SheetFolder.Usual(launch), DisplayUnits.Metric).Card(card.Value, nights)}");
    }

    // Somebody had the belt off to get at the alternator, and put it on again by heart: it closes, and it is wrong.
    private static void Belt(Page page, Launch launch)
    {
        foreach (FittedEngine engine in launch.Boat.Engines)
        {
            if (engine.Specification.BeltDrive is { EngineRouting.IsKnown: true } drive)
            {
                BeltExamination seen = BeltExamination.Of(
                    drive.Route("crank", "tensioner", "raw-water pump", "circulating pump", "alternator", "steering pump", "idler"),
                    RotationalSpeed.FromRevolutionsPerMinute(BeltCommand.UsualCrankSpeed));
                page.Line($"  Belt, as it was put on after work on the alternator: {seen}");
                BeltCommand.Show(page, seen, DisplayUnits.Metric, why: false);
            }
        }
    }

    // The oil for the nights ahead: what fits, and how long the one in the sump will do.
    private static void Oil(Page page, Launch launch, IReadOnlyList<NightMinimum> nights)
    {
        foreach (FittedEngine engine in launch.Boat.Engines)
        {
            if (OilCommand.Season(launch, engine, hottest: null, nights) is OilSeason season)
            {
                page.Line($"  Oil: {season.Selection.Explain(DisplayUnits.Metric).Answer} In the sump: {season.FittedSeason}.");
            }
        }
    }

    // What was seen of the impeller, and whether enough water comes.
    private static void Water(Page page, Launch launch)
    {
        foreach (FittedEngine engine in launch.Boat.Engines)
        {
            if (CoolingCommand.Judged(launch, engine) is ImpellerAssessment judged)
            {
                page.Line($"  Impeller: {judged.Explain(DisplayUnits.Metric).Answer}");
            }

            if (CoolingCommand.Buckets(launch, engine) is [.., BucketCheck check])
            {
                page.Line($"  Cooling water: {check.Explain(DisplayUnits.Metric).Answer}");
            }
        }
    }

    private static void Winter(Page page, Launch launch, IReadOnlyList<NightMinimum> nights)
    {
        foreach (FittedEngine engine in launch.Boat.Engines)
        {
            page.Line($"  Winter: {LayUpCommand.Frost(launch, engine, null, LayUpCommand.Records(nights)).Explain(DisplayUnits.Metric).Answer}");
        }
    }

    // The oil change of the day, where one was measured: whether it adds up, and how much more may be poured.
    private static void Change(Page page, Launch launch)
    {
        Launch told = BalanceCommand.WithChangeOfTheDay(launch);
        foreach (FittedEngine engine in launch.Boat.Engines)
        {
            if (BalanceCommand.Balances(told, engine) is { IsKnown: true, Value: [.., FluidBalance latest] })
            {
                page.Line($"  Oil change measured: {latest.Explain(DisplayUnits.Metric).Answer} Next: {BalanceCommand.Next(latest.Account, DisplayUnits.Metric)}");
            }
        }
    }
}
