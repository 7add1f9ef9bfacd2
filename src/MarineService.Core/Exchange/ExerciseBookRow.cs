using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>One line of an exercise book: its cells by column, what they say, and what is wrong with them.</summary>
internal sealed class ExerciseBookRow
{
    private const decimal MostHours = 1_000_000m;
    private const double MostLiters = 10_000;

    private readonly ExerciseBookForm _form;
    private readonly ExerciseBookHeader _header;
    private readonly int _line;
    private readonly Dictionary<ExerciseBookColumn, string> _cells = [];
    private readonly List<string> _notes = [];
    private readonly List<ExerciseBookFault> _faults = [];

    internal ExerciseBookRow(ExerciseBookForm form, ExerciseBookHeader header, int line, IReadOnlyList<string> cells)
    {
        (_form, _header, _line) = (form, header, line);
        for (int i = 0; i < cells.Count; i++)
        {
            string cell = WithoutGuard(cells[i].Trim());
            if (cell.Length == 0)
            {
                continue;
            }

            if (i >= header.Count)
            {
                _faults.Add(new(line, header.NameAt(i), cell, "no more cells than the header has"));
                break;
            }

            switch (header[i])
            {
                case ExerciseBookColumn.Unknown:
                    _faults.Add(new(line, header.NameAt(i), cell, "nothing in a column that is not known"));
                    break;
                case ExerciseBookColumn.Kept:
                    _notes.Add($"{header.NameAt(i)}: {cell}");
                    break;
                case ExerciseBookColumn.Note:
                    _notes.Insert(0, cell);
                    break;
                default:
                    _cells[header[i]] = cell;
                    break;
            }
        }
    }

    internal IReadOnlyList<ExerciseBookFault> Faults => _faults;

    /// <summary>The entries that the line stands for; only to be used when there is no fault.</summary>
    internal IReadOnlyList<LogEntry> Read()
    {
        LocalDate? date = Date();
        EngineHours? dial = Dial();
        string? scope = Scope();
        double? liters = Liters();
        ExerciseBookWhat? what = What(dial, liters);
        IReadOnlyList<string> tasks = Tasks(scope);
        return _faults.Count > 0 ? [] : [.. Facts(what!.Value, date!.Value, dial, tasks, scope!, liters).Select(fact => Entry(fact, scope!))];
    }

    // A table that is guarded against formulas has an apostrophe before what would be taken for one.
    private static string WithoutGuard(string cell) => cell.Length > 1 && cell[0] == '\'' && cell[1] is '=' or '+' or '-' or '@' ? cell.Substring(1) : cell;

    private LocalDate? Date()
    {
        string cell = Cell(ExerciseBookColumn.Date);
        LocalDate? date = SpreadsheetText.Date(cell, _form.DateOrder);
        return date ?? Fault<LocalDate>(ExerciseBookColumn.Date, "date", SpreadsheetText.ExpectedDate(_form.DateOrder));
    }

    private EngineHours? Dial()
    {
        string cell = Cell(ExerciseBookColumn.Hours);
        if (cell.Length == 0)
        {
            return null;
        }

        decimal? hours = SpreadsheetText.Number(cell, _form.HasDecimalComma);
        return hours is decimal known && known <= MostHours && decimal.Truncate(known * 1000) == known * 1000
            ? EngineHours.FromHours(known)
            : Fault<EngineHours>(ExerciseBookColumn.Hours, "hours", $"hours from 0 to 1000000 with at most three decimals {Mark}, such as {Example("412", "5")}");
    }

    private double? Liters()
    {
        string cell = Cell(Amount);
        if (cell.Length == 0)
        {
            return null;
        }

        double amount = (double)(SpreadsheetText.Number(cell, _form.HasDecimalComma) ?? -1);
        double liters = Amount == ExerciseBookColumn.AddedLiters ? amount : Volume.FromUsQuarts(amount).Liters;
        if (liters is < 0 or > MostLiters)
        {
            return Fault<double>(Amount, "oil added", $"an amount from 0 to 10000 L {Mark}, such as {Example("0", "5")}");
        }

        return liters;
    }

    private string? Scope()
    {
        string cell = Cell(ExerciseBookColumn.Engine);
        string? scope = cell.Length > 0 ? cell : _form.EngineOfUnnamed;
        if (scope is not null && _form.Scopes?.Contains(scope) != false)
        {
            return scope;
        }

        Note(ExerciseBookColumn.Engine, "engine", $"one of {string.Join(", ", _form.Scopes!)}");
        return null;
    }

    private IReadOnlyList<string> Tasks(string? scope)
    {
        string cell = Cell(ExerciseBookColumn.Task);
        if (cell.Length == 0 || scope is null)
        {
            return [];
        }

        IReadOnlyList<string>? tasks = _form.TasksIn(cell, scope, out string expected);
        if (tasks is null)
        {
            Note(ExerciseBookColumn.Task, "task", expected);
        }

        return tasks ?? [];
    }

    // What the line is: as it says, else by the one thing that it holds. Whoever writes 0 on each line says that nothing was added.
    private ExerciseBookWhat? What(EngineHours? dial, double? liters)
    {
        bool isAdded = Holds(Amount) && liters is null or > 0;
        bool isSaid = Holds(ExerciseBookColumn.What);
        ExerciseBookWhat? what = isSaid ? Said()
            : Holds(ExerciseBookColumn.Task) ? ExerciseBookWhat.Done
            : Holds(ExerciseBookColumn.Event) ? ExerciseBookWhat.Event
            : isAdded ? ExerciseBookWhat.TopUp
            : ExerciseBookWhat.Reading;
        if (what is not ExerciseBookWhat known)
        {
            return null;
        }

        bool isTopUp = known == ExerciseBookWhat.TopUp;
        Check(ExerciseBookColumn.Task, "task", Holds(ExerciseBookColumn.Task), known is ExerciseBookWhat.Done or ExerciseBookWhat.Passed or ExerciseBookWhat.Failed, known);
        Check(ExerciseBookColumn.Event, "event", Holds(ExerciseBookColumn.Event), known == ExerciseBookWhat.Event, known);
        Check(Amount, "oil added", isAdded, isTopUp, known);
        Check(ExerciseBookColumn.Fluid, "fluid", Holds(ExerciseBookColumn.Fluid) && !isTopUp, false, known);
        if (known == ExerciseBookWhat.Reading && dial is null && !Holds(ExerciseBookColumn.Hours))
        {
            Note(ExerciseBookColumn.Hours, "hours", isSaid ? "the hours that were read" : "hours, a task, an event or an amount added, or a word in the column 'what'");
        }

        return known;
    }

    private ExerciseBookWhat? Said()
    {
        if (WireEnum<ExerciseBookWhat>.TryFind(ExerciseBookHeader.Plain(Cell(ExerciseBookColumn.What)).Replace(' ', '-'), out ExerciseBookWhat what))
        {
            return what;
        }

        Note(ExerciseBookColumn.What, "what", $"one of {WireEnum<ExerciseBookWhat>.List}, or nothing");
        return null;
    }

    private void Check(ExerciseBookColumn column, string name, bool isThere, bool isWanted, ExerciseBookWhat what)
    {
        if (isThere != isWanted)
        {
            string word = WireEnum<ExerciseBookWhat>.Word(what).ToString();
            Note(column, name, isWanted ? $"something in a line that says '{word}'"
                : what == ExerciseBookWhat.Done ? "a line of its own; what is filled in at a change is not added between changes"
                : $"nothing in a line that says '{word}', or a line of its own");
        }
    }

    private IEnumerable<ServiceFact> Facts(ExerciseBookWhat what, LocalDate date, EngineHours? dial, IReadOnlyList<string> tasks, string scope, double? liters) => what switch
    {
        ExerciseBookWhat.Reading => [MeterReading.Of(date, dial!.Value, ReadingSource.Log)],
        ExerciseBookWhat.Done => tasks.Select(task => Completion.Of(task, date, dial)),
        ExerciseBookWhat.Passed => tasks.Select(task => Completion.Passed(task, date, dial)),
        ExerciseBookWhat.Failed => tasks.Select(task => Completion.Failed(task, date, dial)),
        ExerciseBookWhat.Event => [ServiceEvent.Of(Cell(ExerciseBookColumn.Event), date, dial)],
        ExerciseBookWhat.TopUp => [TopUp.Of(Fluid(scope), date, MeasuredVolume.Of(Volume.FromLiters(liters!.Value)), dial)],
        ExerciseBookWhat.LaidUp => [LaidUp.On(date, dial)],
        _ => [Commissioned.On(date, dial)],
    };

    private string Fluid(string scope) => _cells.TryGetValue(ExerciseBookColumn.Fluid, out string? fluid) ? fluid : _form.OilOf(scope);

    private LogEntry Entry(ServiceFact fact, string scope)
    {
        LogEntry entry = LogEntry.Of(fact);
        entry = scope == LogEntry.MainEngine ? entry : entry.For(scope);
        entry = _cells.TryGetValue(ExerciseBookColumn.By, out string? by) ? entry.DoneBy(by) : entry;
        entry = _cells.TryGetValue(ExerciseBookColumn.CheckedBy, out string? checker) ? entry.WithChecker(checker) : entry;
        return _notes.Count > 0 ? entry.WithNote(string.Join("; ", _notes)) : entry;
    }

    private string Mark => _form.HasDecimalComma ? "behind a comma" : "behind a point (a decimal comma only when it is stated)";

    private string Example(string whole, string part) => whole + (_form.HasDecimalComma ? ',' : '.') + part;

    private ExerciseBookColumn Amount => Holds(ExerciseBookColumn.AddedUsQuarts) ? ExerciseBookColumn.AddedUsQuarts : ExerciseBookColumn.AddedLiters;

    private bool Holds(ExerciseBookColumn column) => _cells.ContainsKey(column);

    private string Cell(ExerciseBookColumn column) => _cells.TryGetValue(column, out string? cell) ? cell : "";

    private T? Fault<T>(ExerciseBookColumn column, string name, string expected)
        where T : struct
    {
        Note(column, name, expected);
        return null;
    }

    private void Note(ExerciseBookColumn column, string name, string expected) =>
        _faults.Add(new(_line, _header.NameOf(column, name), Cell(column), expected));
}
