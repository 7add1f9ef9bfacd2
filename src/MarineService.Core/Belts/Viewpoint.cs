namespace MarineService.Core.Belts;

/// <summary>The end of the engine from which a sense of rotation or a drawing is seen.</summary>
public enum Viewpoint
{
    /// <summary>In front of the pulleys, looking towards the flywheel. The default value.</summary>
    PulleyEnd = 0,

    /// <summary>Behind the flywheel, looking towards the pulleys; every sense reads the other way round from here.</summary>
    FlywheelEnd = 1,
}
