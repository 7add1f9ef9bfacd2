using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of a step, until all of it is read.</summary>
internal sealed class StepParts
{
    internal string? Id { get; set; }

    internal string? Text { get; set; }

    internal string? Why { get; set; }

    internal List<string> After { get; set; } = [];

    internal Circumstance? Condition { get; set; }

    internal bool Holds { get; set; }

    internal List<StepAct> Acts { get; set; } = [];

    internal List<Tool> Tools { get; set; } = [];

    internal List<string> Consumables { get; set; } = [];

    internal List<Caution> Cautions { get; set; } = [];

    internal List<HoldPoint> HoldPoints { get; set; } = [];

    internal double? Minutes { get; set; }

    internal bool Expires { get; set; }

    internal string? Item { get; set; }

    internal bool Replaces { get; set; }

    internal string? Opens { get; set; }

    internal string? Closes { get; set; }

    internal Circumstance? Decides { get; set; }

    internal List<string> Includes { get; set; } = [];

    internal ProcedureStep Build()
    {
        ProcedureStep step = ProcedureStep.Of(Id!, Text!).AfterOnly([.. After]).Does([.. Acts]).With([.. Tools]).Using([.. Consumables])
            .With([.. Cautions]).With([.. HoldPoints]).Including(Includes);
        step = Why is null ? step : step.Because(Why);
        step = Condition is Circumstance condition ? step.When(condition, Holds) : step;
        step = Minutes is double minutes ? step.TakingMinutes(minutes) : step;
        step = Expires ? step.ExpiringOvernight() : step;
        step = Item is null ? step : Replaces ? step.Replacing(Item) : step.Inspecting(Item);
        step = Opens is null ? step : step.Opening(Opens);
        step = Closes is null ? step : step.Closing(Closes);
        return Decides is Circumstance decides ? step.Deciding(decides) : step;
    }
}
