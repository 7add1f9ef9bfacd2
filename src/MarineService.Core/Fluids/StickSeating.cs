namespace MarineService.Core.Fluids;

/// <summary>How the dipstick must sit when it is read. A reading taken the other way is off by the length of the thread.</summary>
public enum StickSeating
{
    /// <summary>Pushed home on its seat. The default value.</summary>
    Seated = 0,

    /// <summary>Screwed in to the stop.</summary>
    ScrewedIn = 1,

    /// <summary>Rested on the thread, not screwed in.</summary>
    RestedOnThread = 2,
}
