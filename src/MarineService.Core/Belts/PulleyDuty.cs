namespace MarineService.Core.Belts;

/// <summary>What a pulley is there for; decides which working figure for the least wrap applies.</summary>
public enum PulleyDuty
{
    /// <summary>Not said. The default value; no working figure applies.</summary>
    NotStated = 0,

    /// <summary>The crankshaft's pulley, which drives the others.</summary>
    Crank = 1,

    /// <summary>The pump that lifts sea or lake water.</summary>
    RawWaterPump = 2,

    /// <summary>The pump that moves the coolant round the engine.</summary>
    CirculatingPump = 3,

    /// <summary>The alternator.</summary>
    Alternator = 4,

    /// <summary>The power steering pump.</summary>
    PowerSteering = 5,

    /// <summary>The pulley that sets the belt's tension.</summary>
    Tensioner = 6,

    /// <summary>A pulley that only guides the belt.</summary>
    Idler = 7,
}
