namespace MarineService.Core.Records;

/// <summary>How well an entry is proved, best last.</summary>
/// <remarks>The grades are a choice of this project; no published scale was found.</remarks>
public enum EvidenceGrade
{
    /// <summary>Put together afterwards from memory or circumstance. The default value.</summary>
    Reconstructed = 0,

    /// <summary>Written down at the time, nothing more.</summary>
    EntryOnly = 1,

    /// <summary>The dial was read and there is a receipt.</summary>
    DialAndReceipt = 2,

    /// <summary>A photograph of the dial, a receipt, and a second person who checked.</summary>
    PhotoReceiptAndChecker = 3,
}
