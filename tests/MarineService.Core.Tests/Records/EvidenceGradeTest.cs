using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Records;

/// <summary>The grades of proof, a choice of this project: the best that the entry's own proofs carry.</summary>
public sealed class EvidenceGradeTest
{
    private static readonly LogEntry Read = LogEntry.Of(Completion.Of("oil", new LocalDate(2026, 4, 1), EngineHours.FromHours(412m)));
    private static readonly LogEntry Unread = LogEntry.Of(Completion.Of("oil", new LocalDate(2026, 4, 1)));
    private static readonly Evidence Receipt = Evidence.Of(EvidenceKind.Receipt, "chandler 118");
    private static readonly Evidence DialPhoto = Evidence.Of(EvidenceKind.DialPhoto, "dial.jpg");
    private static readonly Evidence Photo = Evidence.Of(EvidenceKind.Photo, "filter.jpg");

    [Fact]
    public void Entry_WithDialPhotoReceiptAndChecker_IsTheBest() =>
        Assert.Equal(EvidenceGrade.PhotoReceiptAndChecker, Read.WithEvidence(DialPhoto, Receipt).WithChecker("J. Tait").Grade);

    [Fact]
    public void Entry_WithoutAChecker_IsOneGradeLower() =>
        Assert.Equal(EvidenceGrade.DialAndReceipt, Read.WithEvidence(DialPhoto, Receipt).Grade);

    [Fact]
    public void Entry_WithAPhotoOfThePartOnly_IsOneGradeLower() =>
        Assert.Equal(EvidenceGrade.DialAndReceipt, Read.WithEvidence(Photo, Receipt).WithChecker("J. Tait").Grade);

    [Fact]
    public void Entry_WithReceiptButNoDial_IsTheEntryAlone() => Assert.Equal(EvidenceGrade.EntryOnly, Unread.WithEvidence(Receipt).Grade);

    [Fact]
    public void Entry_WithDialButNoReceipt_IsTheEntryAlone() => Assert.Equal(EvidenceGrade.EntryOnly, Read.WithChecker("J. Tait").Grade);

    [Fact]
    public void Entry_AdmittedAsReconstructed_IsTheLowestWhateverItShows() => Assert.Equal(
        EvidenceGrade.Reconstructed, Read.WithEvidence(DialPhoto, Receipt).WithChecker("J. Tait").AsReconstructed().Grade);

    [Fact]
    public void Grades_RiseWithTheProof() => Assert.Equal(
        [EvidenceGrade.Reconstructed, EvidenceGrade.EntryOnly, EvidenceGrade.DialAndReceipt, EvidenceGrade.PhotoReceiptAndChecker],
        Enum.GetValues<EvidenceGrade>().Order());

    [Fact]
    public void Evidence_AddedLater_KeepsWhatWasThere() => Assert.Equal([Receipt, Photo], Read.WithEvidence(Receipt).WithEvidence(Photo).Evidence);

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("g3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    public void Evidence_WithSomethingThatIsNoHash_IsRefused(string hash) =>
        Assert.Throws<ArgumentException>("sha256", () => Evidence.Of(EvidenceKind.Photo, "filter.jpg", hash));

    [Fact]
    public void Evidence_WithAHash_KeepsItInLowerCase() =>
        Assert.Equal(new string('a', 64), Evidence.Of(EvidenceKind.Photo, "filter.jpg", new string('A', 64)).Sha256);
}
