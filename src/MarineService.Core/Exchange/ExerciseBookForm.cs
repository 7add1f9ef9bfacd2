using MarineService.Core.Internal;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;

namespace MarineService.Core.Exchange;

/// <summary>How an exercise book is written: what its dates, numbers and words mean. Nothing is guessed that could mean two things.</summary>
public sealed class ExerciseBookForm
{
    private static readonly char[] Between = [',', ';', '\n'];

    private readonly Dictionary<string, IReadOnlyList<string>> _tasksByWords;
    private readonly HashSet<string> _noteColumns;

    private ExerciseBookForm(Dictionary<string, IReadOnlyList<string>> tasksByWords, HashSet<string> noteColumns) =>
        (_tasksByWords, _noteColumns) = (tasksByWords, noteColumns);

    /// <summary>Dates of ISO 8601, a decimal point, the main engine, tasks by their ids, no further columns.</summary>
    public static ExerciseBookForm Default { get; } = new([], []);

    /// <summary>In which order dates name day, month and year.</summary>
    public DateOrder DateOrder { get; private set; }

    /// <summary>Whether numbers have a decimal comma.</summary>
    public bool HasDecimalComma { get; private set; }

    /// <summary>The boat against whose engines and tasks the words are checked; null when they are taken as they are.</summary>
    public BoatSpecification? Boat { get; private set; }

    /// <summary>A copy for dates in a stated order.</summary>
    /// <param name="order">The order of day, month and year.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="order"/> is not defined.</exception>
    public ExerciseBookForm WithDates(DateOrder order)
    {
        Guard.Defined(order);
        ExerciseBookForm copy = Copy();
        copy.DateOrder = order;
        return copy;
    }

    /// <summary>A copy for numbers with a decimal comma, such as 412,5; a point is then refused.</summary>
    /// <returns>The copy.</returns>
    public ExerciseBookForm WithDecimalComma()
    {
        ExerciseBookForm copy = Copy();
        copy.HasDecimalComma = true;
        return copy;
    }

    /// <summary>A copy that takes only the boat's engines and tasks, tasks by their titles too: a slip in a task's id would count for no task at all.</summary>
    /// <param name="boat">The boat. A line without an engine is for its engine when it has one only.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/> is null.</exception>
    public ExerciseBookForm For(BoatSpecification boat)
    {
        Guard.NotNull(boat);
        ExerciseBookForm copy = Copy();
        copy.Boat = boat;
        return copy;
    }

    /// <summary>A copy that knows what the book's own words for a task mean, such as "changed oil + filter".</summary>
    /// <param name="words">The words as they fill the task's cell, capitals or not; not blank.</param>
    /// <param name="taskIds">The tasks that they stand for; at least one, none blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="words"/>, <paramref name="taskIds"/> or an item is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="words"/> is blank, no task is named, or one is blank or named twice.</exception>
    public ExerciseBookForm Calling(string words, params string[] taskIds)
    {
        Guard.NotBlank(words);
        IReadOnlyList<string> ids = Names.Distinct(taskIds, nameof(taskIds));
        if (ids.Count == 0)
        {
            throw new ArgumentException("Must name at least one task.", nameof(taskIds));
        }

        ExerciseBookForm copy = Copy();
        copy._tasksByWords[ExerciseBookHeader.Plain(words)] = ids;
        return copy;
    }

    /// <summary>A copy that keeps columns which the library has no place for, such as the weather, in the note: "weather: rain".</summary>
    /// <param name="columns">Their names as the header has them, capitals or not; none blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="columns"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An item is blank or named twice.</exception>
    public ExerciseBookForm KeepingAsNotes(params string[] columns)
    {
        ExerciseBookForm copy = Copy();
        copy._noteColumns.UnionWith(Names.Distinct(columns, nameof(columns)).Select(ExerciseBookHeader.Plain));
        return copy;
    }

    internal bool KeepsAsNote(string plainName) => _noteColumns.Contains(plainName);

    /// <summary>Whose a line is that names no engine; null when the boat has several.</summary>
    internal string? EngineOfUnnamed => Boat is null ? LogEntry.MainEngine : Boat.Engines.Count == 1 ? Boat.Engines[0].Id : null;

    /// <summary>Whose entries there can be; null when any name will do.</summary>
    internal IReadOnlyList<string>? Scopes => Boat is null ? null : [.. Boat.Engines.Select(engine => engine.Id), BoatSpecification.Scope];

    /// <summary>The fluid that is added when a line does not say which.</summary>
    internal string OilOf(string scope) =>
        Boat?.Engines.FirstOrDefault(engine => engine.Id == scope)?.Specification.OilTaskId ?? EngineSpecification.EngineOilTask;

    /// <summary>The tasks that a cell names: by the book's own words, by an id or title, or several in a row; null with what was expected.</summary>
    internal IReadOnlyList<string>? TasksIn(string cell, string scope, out string expected)
    {
        IReadOnlyList<ServiceTask>? known = TasksOf(scope);
        expected = "";
        if (TasksCalled(cell, known) is { } whole)
        {
            return whole;
        }

        string[] parts = [.. cell.Split(Between).Select(part => part.Trim()).Where(part => part.Length > 0)];
        IReadOnlyList<string>?[] named = Array.ConvertAll(parts, part => TasksCalled(part, known) ?? (known is null ? [part] : null));
        if (named.Length > 0 && !named.Contains(null))
        {
            return [.. named.SelectMany(tasks => tasks!).Distinct(StringComparer.Ordinal)];
        }

        expected = known is null ? "ids of tasks" : $"tasks of '{scope}': {string.Join(", ", known.Select(task => task.Id).Distinct(StringComparer.Ordinal))}";
        return null;
    }

    private IReadOnlyList<string>? TasksCalled(string words, IReadOnlyList<ServiceTask>? known) =>
        _tasksByWords.TryGetValue(ExerciseBookHeader.Plain(words), out IReadOnlyList<string>? called)
            ? known is null || called.All(id => known.Any(task => task.Id == id)) ? called : null
            : known?.FirstOrDefault(task => task.Id == words || string.Equals(task.Title, words, StringComparison.OrdinalIgnoreCase)) is { } task ? [task.Id]
            : null;

    // The boat's own tasks may be entered under an engine.
    private IReadOnlyList<ServiceTask>? TasksOf(string scope) => Boat is null
        ? null
        : [.. Boat.Engines.Where(engine => engine.Id == scope).SelectMany(engine => engine.Specification.Tasks), .. Boat.Tasks];

    private ExerciseBookForm Copy() => new(new(_tasksByWords), [.. _noteColumns])
    {
        DateOrder = DateOrder,
        HasDecimalComma = HasDecimalComma,
        Boat = Boat,
    };
}
