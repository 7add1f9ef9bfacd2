using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Procedures;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <content>The steps, each with what endangers, what is proved and room to write.</content>
internal sealed partial class ServiceSheetParts
{
    private XElement Steps() => SheetFrame.Section(
        "steps",
        "Steps, in this order",
        Html.Tag("p", "A hold point stops the work until what it says is so, is written down and has initials beside it."),
        SheetFrame.Table(
            "steps",
            [FormattableString.Invariant($"Of {_card.Steps.Count}"), "Step", "Hold points, values, initials"],
            _card.Steps.Select((step, i) => Step(step, i + 1))));

    private XElement Step(ProcedureStep step, int number) => SheetFrame.Row(
        Html.Attribute("id", StepId(number)),
        SheetFrame.Head(Html.Class("step-number"), SheetFrame.Tick(FormattableString.Invariant($"{number}"))),
        SheetFrame.Cell(
            step.Cautions.OrderByDescending(caution => caution.Word).Select(Caution),
            step.Condition is Circumstance condition ? Html.Tag("p", Html.Class("only"), Only(step, condition)) : null,
            Html.Tag(
                "p",
                Html.Tag("strong", Html.Class("do"), Html.Words(step.Text), "."),
                step.Why is string why ? new object[] { " Why: ", Html.Words(why), "." } : null),
            Html.Tag("p", Html.Class("quiet"), With(step))),
        SheetFrame.Cell(step.HoldPoints.Count > 0 ? step.HoldPoints.Select(Hold) : SheetFrame.Write("initials", "write-short")));

    private XElement Caution(Caution caution) => Html.Tag(
        "div",
        Html.Class($"caution {Signal(caution.Word)}"),
        Html.Tag("span", Html.Class("signal"), caution.Word.ToString().ToUpperInvariant()),
        Html.Tag("span", Html.Words(caution.Text), _sources.Mark(caution.Citation)));

    private string Only(ProcedureStep step, Circumstance condition) =>
        $"Only if {Words.Of(condition, step.ConditionHolds)}{(_card.Procedure.OpenQuestions.Contains(condition) ? " (settle this first)" : "")}:";

    private static IEnumerable<object> With(ProcedureStep step)
    {
        string[] with = [.. step.Tools.Select(tool => tool.ToString()), .. step.Consumables];
        if (with.Length > 0)
        {
            yield return "With ";
            yield return Html.Words(string.Join("; ", with));
            yield return ". ";
        }

        if (step.Time is { } time)
        {
            yield return FormattableString.Invariant($"About {time.Minutes:0} min. ");
        }

        if (step.Expires)
        {
            yield return "Again on every day of work. ";
        }

        yield return Html.Tag("span", Html.Class("id"), "(", Html.Words(step.Id), ")");
    }

    private static XElement Hold(HoldPoint point) => Html.Tag(
        "div",
        Html.Class("hold"),
        Html.Tag("p", Html.Tag("b", "HOLD"), " ", Html.Words(point.ToString()), "."),
        SheetFrame.Tick("passed"),
        " ",
        point.LeastTime is not null ? SheetFrame.Write("minutes", "write-short")
            : point.CountsToZero ? SheetFrame.Write("count", "write-short")
            : null,
        SheetFrame.Write("initials", "write-short"),
        point.IsWritten ? SheetFrame.Write("", "write-long") : null);

    private static string Signal(SignalWord word) => word switch
    {
        SignalWord.Danger => "danger",
        SignalWord.Warning => "warning",
        SignalWord.Caution => "caution-word",
        _ => "notice",
    };

    private static string StepId(int number) => FormattableString.Invariant($"step-{number}");
}
