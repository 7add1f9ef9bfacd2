using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Parts;

namespace MarineService.Core.Tests.Parts;

/// <summary>Everything that comes off goes back on.</summary>
public sealed class LoosePartsTest
{
    private static readonly LoosePart[] Kinds =
    [
        LoosePart.Of("M6 x 20 screw", LoosePartKind.Screw, "pump cover", captiveWashers: 1),
        LoosePart.Of("M6 x 20 screw", LoosePartKind.Screw, "belt guard"),
        LoosePart.Of("drive pin", LoosePartKind.Pin, "pump shaft"),
        LoosePart.Of("circlip", LoosePartKind.Clip, "pump shaft"),
        LoosePart.Of("flat washer", LoosePartKind.Washer, "anode plug"),
    ];

    [Law(MaxTest = 300)]
    public Property Tally_IsZeroExactlyWhenEverythingIsBack() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        List<(LoosePart Part, int Off)> moves = [];
        for (int i = random.Next(1, 8); i > 0; i--)
        {
            (LoosePart part, int count) = (Kinds[random.Next(Kinds.Length)], random.Next(1, 9));
            moves.Add((part, count));
            moves.Add((part, -count));
        }

        List<(LoosePart Part, int Off)> shuffled = [.. moves.OrderBy(_ => random.Next())];
        LooseParts all = shuffled.Aggregate(LooseParts.Empty, Apply);
        int without = random.Next(shuffled.Count);
        LooseParts less = shuffled.Where((_, i) => i != without).Aggregate(LooseParts.Empty, Apply);
        return all.IsZero && all.Judge().Count == 0 && !less.IsZero && less.Judge().Count > 0;
    });

    [Law(MaxTest = 200)]
    public Property Tally_InWhateverOrderAndPart_IsTheSame() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        (LoosePart, int)[] moves = [.. Enumerable.Range(0, 8).Select(_ => (Kinds[random.Next(Kinds.Length)], random.Next(1, 9) * (random.Next(2) == 0 ? 1 : -1)))];
        int cut = random.Next(moves.Length);
        LooseParts one = moves.Aggregate(LooseParts.Empty, Apply);
        LooseParts parts = moves.Skip(cut).Aggregate(LooseParts.Empty, Apply).And(moves.Take(cut).Aggregate(LooseParts.Empty, Apply));
        return one.ToString() == parts.ToString();
    });

    [Fact]
    public void CaptiveWashers_StillGetCounted_CommonPractice()
    {
        LooseParts tally = LooseParts.Empty.TakenOff(Kinds[0], 6).PutBack(Kinds[0], 6, captiveWashers: 5);
        Finding finding = Assert.Single(tally.Judge());
        Assert.Equal("TALLY-001 Stop: captive washer on M6 x 20 screw of pump cover: 1 still off", finding.ToString());
        Assert.True(LooseParts.Empty.TakenOff(Kinds[0], 6).PutBack(Kinds[0], 6, captiveWashers: 6).IsZero);

        // Nobody looked: they are still off.
        Assert.False(LooseParts.Empty.TakenOff(Kinds[0], 6).PutBack(Kinds[0], 6).IsZero);
    }

    [Fact]
    public void Renewed_WithTheOldOneNotInTheHand_StaysOpenUntilItIsFound()
    {
        LooseParts lost = LooseParts.Empty.TakenOff(Kinds[2], 1).Renewed(Kinds[2], 1, oldInHand: false);
        Assert.Equal("TALLY-003", Assert.Single(lost.Judge()).Code);
        Assert.True(lost.Found(Kinds[2], 1).IsZero);
        Assert.True(LooseParts.Empty.TakenOff(Kinds[2], 1).Renewed(Kinds[2], 1, oldInHand: true).IsZero);
    }

    [Fact]
    public void SameScrewAtAnotherPlace_DoesNotCount() =>
        Assert.Equal(["TALLY-002", "TALLY-001", "TALLY-001"], LooseParts.Empty.TakenOff(Kinds[0], 1).PutBack(Kinds[1], 1).Judge().Select(finding => finding.Code));

    [Fact]
    public void Earlier_Tally_IsNotChanged()
    {
        LooseParts before = LooseParts.Empty.TakenOff(Kinds[3], 1);
        before.PutBack(Kinds[3], 1);
        Assert.False(before.IsZero);
        Assert.True(LooseParts.Empty.IsZero);
    }

    private static LooseParts Apply(LooseParts tally, (LoosePart Part, int Off) move) =>
        move.Off > 0 ? tally.TakenOff(move.Part, move.Off) : tally.PutBack(move.Part, -move.Off, captiveWashers: -move.Off * move.Part.CaptiveWashers);
}
