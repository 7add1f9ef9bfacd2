namespace MarineService.Core.Fluids;

/// <summary>What an event led to: the state after it, and what there is to say about it.</summary>
internal sealed class AccountOutcome(in AccountState state, OilChangeRemark remarks)
{
    private readonly AccountState _state = state;

    internal AccountState State => _state;

    internal OilChangeRemark Remarks { get; } = remarks;
}
