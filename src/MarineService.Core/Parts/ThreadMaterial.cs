namespace MarineService.Core.Parts;

/// <summary>What a screw is screwed into.</summary>
public enum ThreadMaterial
{
    /// <summary>Not stated. The default value; nothing is worked out from it.</summary>
    NotStated = 0,

    /// <summary>Steel at least as strong as the screw, or a nut of its class.</summary>
    Steel = 1,

    /// <summary>Cast iron.</summary>
    CastIron = 2,

    /// <summary>Aluminium.</summary>
    Aluminium = 3,

    /// <summary>Bronze or brass, as pump bodies are.</summary>
    Bronze = 4,

    /// <summary>Plastic, with or without inserts.</summary>
    Plastic = 5,
}
