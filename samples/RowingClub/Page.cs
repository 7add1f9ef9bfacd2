using MarineService.Core;
using MarineService.Core.Scheduling;
using Spectre.Console;

namespace RowingClub;

/// <summary>Where people read: coloured on a terminal, plain in a pipe, on a dumb terminal, or with NO_COLOR.</summary>
internal sealed class Page
{
    private readonly IAnsiConsole _console;

    internal Page(TextWriter output, bool redirected)
    {
        _console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });
        if (redirected)
        {
            // A pipe has no width: nothing is wrapped or coloured in it.
            _console.Profile.Width = 10_000;
            _console.Profile.Capabilities.Ansi = false;
        }
    }

    internal void Line(string text = "") => _console.Write(new Text(text + "\n"));

    internal void Title(string text) => _console.Write(new Text(text + "\n", new Style(decoration: Decoration.Bold)));

    /// <summary>A task on one line: how urgent, what, when, why.</summary>
    internal void Task(TaskDue task)
    {
        _console.Write(new Text($"  {Word(task.Status),-9}", new Style(Colour(task.Status))));
        string text = task.ToString();
        _console.Write(new Text($" {task.Task.Title} - {text[(text.IndexOf(", ", StringComparison.Ordinal) + 2)..]}\n"));
    }

    /// <summary>When a task that is not due yet is expected to be, on one line, or with all reasons.</summary>
    internal void Forecast(TaskDue task, DisplayUnits units, bool why)
    {
        if (task.Status is DueStatus.NotDue or DueStatus.DueSoon && task.Task.Interval is not null)
        {
            _console.Write(new Text($"            {task.Forecast}\n", new Style(decoration: Decoration.Dim)));
            if (why)
            {
                Explain(task.Forecast.Explain(units));
            }
        }
    }

    /// <summary>Why, indented below the task.</summary>
    internal void Explain(Explanation explanation)
    {
        foreach (string line in explanation.ToString().Split('\n').Skip(1))
        {
            _console.Write(new Text($"            {line.TrimStart()}\n", new Style(decoration: Decoration.Dim)));
        }
    }

    internal void Finding(Finding finding, DisplayUnits units)
    {
        _console.Write(new Text($"  {finding.Severity.ToString().ToUpperInvariant(),-9}", new Style(Colour(finding.Severity))));
        _console.Write(new Text($" {finding.Message(units)}.\n"));
        Explanation explanation = finding.Explain(units);
        if (explanation.Lines.FirstOrDefault(line => line.Label == "do") is { } remedy)
        {
            _console.Write(new Text($"            {remedy.Text}\n", new Style(decoration: Decoration.Dim)));
        }
    }

    internal static string Word(DueStatus status) => status switch
    {
        DueStatus.Overdue => "OVERDUE",
        DueStatus.Due => "DUE",
        DueStatus.DueSoon => "due soon",
        DueStatus.EachUse => "each use",
        _ => "not due",
    };

    private static Color Colour(DueStatus status) => status switch
    {
        DueStatus.Overdue => Color.Red,
        DueStatus.Due => Color.Yellow,
        DueStatus.DueSoon => Color.Aqua,
        _ => Color.Default,
    };

    private static Color Colour(Severity severity) => severity switch
    {
        Severity.Stop => Color.Red,
        Severity.Act => Color.Yellow,
        _ => Color.Default,
    };
}
