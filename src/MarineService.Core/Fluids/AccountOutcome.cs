namespace MarineService.Core.Fluids;

/// <summary>What an event led to: the state after it, and what there is to say about it.</summary>
internal sealed class AccountOutcome(in AccountState state, OilChangeRemark remarks, OilChangeOpening opening)
{
    private readonly AccountState _state = state;

    internal ref readonly AccountState State => ref _state;

    internal OilChangeRemark Remarks { get; } = remarks;

    internal OilChangeOpening Opening { get; } = opening;
}
