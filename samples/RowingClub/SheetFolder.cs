using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Oils;
using MarineService.Core.Procedures;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports;
using MarineService.Reports.Calendars;
using MarineService.Reports.Charts;
using MarineService.Reports.Drawings;
using MarineService.Reports.Sheets;
using MarineService.Reports.Tables;
using NodaTime;
using RowingClub.Commands;

namespace RowingClub;

/// <summary>What there is to look at of one engine, written into a folder: sheets, drawings, calendar, tables.</summary>
internal sealed class SheetFolder
{
    private readonly string _path;
    private readonly DisplayUnits _units;
    private readonly Paper _paper;
    private readonly List<string> _written = [];

    internal SheetFolder(string path, DisplayUnits units, Paper paper = Paper.OfPrinter) => (_path, _units, _paper) = (path, units, paper);

    /// <summary>The files, in the order of writing.</summary>
    internal IReadOnlyList<string> Written => _written;

    /// <summary>Where a launch's sheets go when nobody says: a folder of the boat and the day, below the one that one is in.</summary>
    internal static string Usual(Launch launch) =>
        Path.Combine("sheets", FormattableString.Invariant($"{FileName.Of(launch.Boat.Boat.Name)}-{launch.Today:uuuu'-'MM'-'dd}"));

    /// <summary>The sheet that goes to the boat, with what the hands need to see: how the belt lies, how the cover goes on, what the oil does in the cold.</summary>
    internal string Card(JobCard card, IReadOnlyList<NightMinimum> nights)
    {
        bool Does(params StepAct[] acts) => card.Steps.Any(step => step.Acts.Any(acts.Contains));
        EngineSpecification engine = card.Engine.Specification;
        Sheet sheet = ServiceSheet.Of(
            card,
            [
                .. Does(StepAct.BeltOff, StepAct.BeltOn) ? Belts(engine) : [],
                .. Does(StepAct.TakePumpCoverOff) ? Covers(engine) : [],
                .. card.Oil is { Choice.IsKnown: true } oil ? [Oil(oil.Choice.Value, card.Day, nights)] : Array.Empty<Drawing>(),
            ],
            _units,
            _paper);
        return Write($"{sheet.Name}.html", sheet.WriteTo);
    }

    /// <summary>Everything that stays: logbook, compliance statement, drawings, calendar and tables.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="engine">Its engine.</param>
    /// <param name="card">The card of the day; null when there is none.</param>
    /// <param name="nights">The nights ahead; empty when nobody knows.</param>
    /// <param name="season">What oil those nights ask for; null when nobody knows.</param>
    /// <param name="latest">The latest oil change; null when none is told.</param>
    internal void Rest(Launch launch, FittedEngine engine, JobCard? card, IReadOnlyList<NightMinimum> nights, OilSeason? season, FluidBalance? latest)
    {
        DueList due = launch.Log.DueList(launch.Boat, launch.Today);
        (VisitPlanner planner, Answer<VisitPlan> plan) = VisitsCommand.Plan(launch, due);
        Add(Logbook.Of(launch.Boat, launch.Log, launch.Today, _units, _paper));
        Add(ComplianceStatement.Of(launch.Boat, launch.Log.Compliance(engine.Specification, launch.Today, engine: engine.Id), _units, _paper, engine.Id));
        Drawing[] drawings =
        [
            .. Belts(engine.Specification),
            .. Covers(engine.Specification),
            .. season is not null
                ? [Oil(season.Selection, launch.Today, nights)]
                : card?.Oil is { Choice.IsKnown: true } oil ? [Oil(oil.Choice.Value, launch.Today, [])] : Array.Empty<Drawing>(),
            .. latest is null ? Array.Empty<Drawing>() : [DipstickDrawing.Of(latest, _units)],
            UseChart.Of(launch.Log.History(engine.Specification, launch.Today, engine.Id), launch.Log.DueList(engine.Specification, launch.Today, engine.Id), units: _units),
            .. plan.IsKnown ? [VisitPlanDrawing.Of(plan.Value, planner)] : Array.Empty<Drawing>(),
        ];
        foreach (Drawing drawing in drawings)
        {
            Write($"{drawing.Name}.svg", drawing.WriteTo);
        }

        ServiceCalendar calendar = ServiceCalendar.Of(due, launch.Boat.Boat.Name);
        calendar = plan.IsKnown ? calendar.With(plan.Value) : calendar;
        Write("service-calendar.ics", stream => calendar.WriteTo(stream, _units));
        Add(CsvTable.Of(due));
        Add(CsvTable.Of(launch.Log));
        Add(CsvTable.Of(due.Findings, _units));
        if (card is { Kit.List.IsKnown: true })
        {
            Add(CsvTable.Of(card.Kit.List.Value));
        }
    }

    private IEnumerable<Drawing> Belts(EngineSpecification engine) =>
        engine.BeltDrive is { EngineRouting: { IsKnown: true, Value: BeltRouting belt } } ? [BeltDrawing.Of(belt, _units)] : [];

    private IEnumerable<Drawing> Covers(EngineSpecification engine) =>
        from cover in engine.Covers let fit = cover.FitOfItself() where fit.IsKnown select BoltPatternDrawing.Of(fit.Value, _units);

    private Drawing Oil(OilSelection oil, LocalDate from, IReadOnlyList<NightMinimum> nights) =>
        ViscosityChart.Of(oil, nights: nights.Where(night => night.Date >= from), units: _units);

    private void Add(Sheet sheet) => Write($"{sheet.Name}.html", sheet.WriteTo);

    private void Add(CsvTable table) => Write($"{table.Name}.csv", stream => table.WriteTo(stream, withMark: true));

    private string Write(string name, Action<Stream> content)
    {
        string file = Path.Combine(_path, name);
        try
        {
            Directory.CreateDirectory(_path);
            using FileStream stream = new(file, FileMode.Create);
            content(stream);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UserFault(ExitCode.NoSuchFile, $"{file}: {fault.Message}");
        }

        _written.Add(file);
        return file;
    }
}
