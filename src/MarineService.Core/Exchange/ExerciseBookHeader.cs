using System.Text;

namespace MarineService.Core.Exchange;

/// <summary>The first line of an exercise book: which column is what.</summary>
internal sealed class ExerciseBookHeader
{
    /// <summary>The names that are told to whoever used another; the first for each column.</summary>
    internal const string Known = "date, engine, hours, what, task, event, fluid, oil added, by, checked by, note";

    // More is no exercise book, and would make a hostile file dear.
    private const int MostColumns = 200;

    private static readonly Dictionary<string, ExerciseBookColumn> Columns = new(StringComparer.Ordinal)
    {
        ["date"] = ExerciseBookColumn.Date,
        ["engine"] = ExerciseBookColumn.Engine,
        ["hours"] = ExerciseBookColumn.Hours,
        ["hours h"] = ExerciseBookColumn.Hours,
        ["engine hours"] = ExerciseBookColumn.Hours,
        ["dial"] = ExerciseBookColumn.Hours,
        ["what"] = ExerciseBookColumn.What,
        ["task"] = ExerciseBookColumn.Task,
        ["tasks"] = ExerciseBookColumn.Task,
        ["event"] = ExerciseBookColumn.Event,
        ["fluid"] = ExerciseBookColumn.Fluid,
        ["oil added"] = ExerciseBookColumn.AddedLiters,
        ["oil added l"] = ExerciseBookColumn.AddedLiters,
        ["oil added us qt"] = ExerciseBookColumn.AddedUsQuarts,
        ["added"] = ExerciseBookColumn.AddedLiters,
        ["added l"] = ExerciseBookColumn.AddedLiters,
        ["added us qt"] = ExerciseBookColumn.AddedUsQuarts,
        ["by"] = ExerciseBookColumn.By,
        ["by whom"] = ExerciseBookColumn.By,
        ["done by"] = ExerciseBookColumn.By,
        ["checked by"] = ExerciseBookColumn.CheckedBy,
        ["note"] = ExerciseBookColumn.Note,
        ["notes"] = ExerciseBookColumn.Note,
        ["remark"] = ExerciseBookColumn.Note,
        ["remarks"] = ExerciseBookColumn.Note,
    };

    private readonly string[] _names;
    private readonly ExerciseBookColumn[] _columns;

    internal ExerciseBookHeader(int line, IReadOnlyList<string> cells, ExerciseBookForm form)
    {
        _names = [.. cells.Take(MostColumns).Select(cell => cell.Trim())];
        _columns = [.. _names.Select(name => Column(Plain(name), form))];
        List<ExerciseBookFault> faults = [];
        for (int i = 0; i < _columns.Length; i++)
        {
            if (_columns[i] == ExerciseBookColumn.Unknown && _names[i].Length > 0)
            {
                faults.Add(new(line, _names[i], _names[i], $"one of {Known}, or a column that is kept as a note"));
            }
            else if (_columns[i] is not (ExerciseBookColumn.Unknown or ExerciseBookColumn.Kept) && Array.FindIndex(_columns, Like(_columns[i])) < i)
            {
                faults.Add(new(line, _names[i], _names[i], $"a column that is not there already as '{_names[Array.FindIndex(_columns, Like(_columns[i]))]}'"));
                _columns[i] = ExerciseBookColumn.Unknown;
            }
        }

        if (cells.Count > MostColumns)
        {
            faults.Add(new(line, "", FormattableString.Invariant($"{cells.Count} columns"), FormattableString.Invariant($"at most {MostColumns}")));
        }

        if (!_columns.Contains(ExerciseBookColumn.Date))
        {
            faults.Add(new(line, "", string.Join(", ", _names), "a column 'date'"));
        }

        Faults = faults;
    }

    internal IReadOnlyList<ExerciseBookFault> Faults { get; }

    internal int Count => _columns.Length;

    internal ExerciseBookColumn this[int index] => _columns[index];

    /// <summary>How many of the cells name a column that is known: the separator that finds more of them is the file's.</summary>
    internal static int CountKnown(IReadOnlyList<string> cells, ExerciseBookForm form) =>
        cells.Count(cell => Column(Plain(cell), form) != ExerciseBookColumn.Unknown);

    internal string NameAt(int index) =>
        index < _names.Length && _names[index].Length > 0 ? _names[index] : FormattableString.Invariant($"cell {index + 1}");

    internal string NameOf(ExerciseBookColumn column, string otherwise)
    {
        int index = Array.IndexOf(_columns, column);
        return index < 0 ? otherwise : _names[index];
    }

    /// <summary>A name as it is compared: small letters, one space between words, no brackets, dashes or underscores.</summary>
    internal static string Plain(string name)
    {
        StringBuilder plain = new();
        foreach (char c in name)
        {
            if (char.IsWhiteSpace(c) || c is '-' or '_' or '(' or ')' or '[' or ']')
            {
                if (plain.Length > 0 && plain[plain.Length - 1] != ' ')
                {
                    plain.Append(' ');
                }
            }
            else
            {
                plain.Append(char.ToLowerInvariant(c));
            }
        }

        return plain.ToString().TrimEnd();
    }

    private static ExerciseBookColumn Column(string plainName, ExerciseBookForm form) =>
        form.KeepsAsNote(plainName) ? ExerciseBookColumn.Kept
        : Columns.TryGetValue(plainName, out ExerciseBookColumn column) ? column
        : ExerciseBookColumn.Unknown;

    // Litres and quarts are two names of one column.
    private static Predicate<ExerciseBookColumn> Like(ExerciseBookColumn column) => other =>
        other == column || (IsAmount(other) && IsAmount(column));

    private static bool IsAmount(ExerciseBookColumn column) => column is ExerciseBookColumn.AddedLiters or ExerciseBookColumn.AddedUsQuarts;
}
