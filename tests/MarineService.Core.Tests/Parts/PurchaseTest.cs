using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Parts;

namespace MarineService.Core.Tests.Parts;

/// <summary>The exact purchase against every purchase there is.</summary>
public sealed class PurchaseTest
{
    [Law(MaxTest = 400)]
    public Property Cheapest_IsTheBestOfAllPurchases() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        (decimal needed, PackOffer[] offers) = Draw(new Random(seed), most: 4);
        Purchase purchase = Purchase.Cheapest(needed, offers);
        (decimal Price, decimal Amount, int Packs) best = Exhaustive(needed, offers, 0);
        return (purchase.Price == best.Price && purchase.Amount == best.Amount && purchase.Lines.Sum(line => line.Count) == best.Packs)
            .Label($"{needed} of {string.Join(", ", (object[])offers)}: {purchase}, best {best}");
    });

    [Law(MaxTest = 200)]
    public Property Cheapest_IsTheSameInWhateverOrder() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        (decimal needed, PackOffer[] offers) = Draw(new Random(seed), most: 10);
        return Purchase.Cheapest(needed, offers).ToString() == Purchase.Cheapest(needed, [.. offers.Reverse()]).ToString();
    });

    [Law(MaxTest = 200)]
    public Property Cheapest_CoversAndNeverCostsMoreThanOneSize() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        (decimal needed, PackOffer[] offers) = Draw(new Random(seed), most: 10);
        Purchase purchase = Purchase.Cheapest(needed, offers);
        return purchase.Surplus >= 0 && (needed == 0 || purchase.Price <= purchase.CheapestOfOneSize!.Price);
    });

    [Fact]
    public void Cheapest_CanAndBottle_BeatsTwoCansAndSixBottles()
    {
        Purchase purchase = Purchase.Cheapest(5.7m, PackOffer.Of("can", 5m, 40m), PackOffer.Of("bottle", 1m, 11m));
        Assert.Equal("1 x can, 1 x bottle: 51.00", purchase.ToString());
        Assert.Equal(0.3m, purchase.Surplus);
        Assert.Equal(66m, purchase.CheapestOfOneSize!.Price);
    }

    [Fact]
    public void Cheapest_AtOnePrice_LeavesTheLeastOverThenTakesTheFewestPacks()
    {
        Assert.Equal("1 x 4 L: 10.00", Purchase.Cheapest(4m, PackOffer.Of("5 L", 5m, 10m), PackOffer.Of("4 L", 4m, 10m)).ToString());
        Assert.Equal("1 x 4 L: 10.00", Purchase.Cheapest(4m, PackOffer.Of("2 L", 2m, 5m), PackOffer.Of("4 L", 4m, 10m)).ToString());
    }

    [Fact]
    public void Cheapest_OfNothing_BuysNothing() => Assert.Equal("nothing to buy", Purchase.Cheapest(0m, PackOffer.Of("can", 5m, 40m)).ToString());

    [Fact]
    public void Cheapest_WithNoMeasureInCommon_IsRefusedByName() =>
        Assert.Equal("offers", Assert.Throws<ArgumentException>(() => Purchase.Cheapest(100_000m, PackOffer.Of("a", 1.001m, 1m), PackOffer.Of("b", 2m, 1m))).ParamName);

    [Fact]
    public void Offer_WithTooManyDecimals_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("amount", () => PackOffer.Of("a", 1.0001m, 1m));
        Assert.Throws<ArgumentOutOfRangeException>("price", () => PackOffer.Of("a", 1m, 0.00001m));
    }

    [Fact]
    public void Choice_SavingWithASafetyAttributeUnknown_StaysWithTheOriginal()
    {
        PartAlternative cheap = PartAlternative.Of(FilterComparisonTest.Need().Compare(FilterComparisonTest.Good().WithBypass(null)), 6m);
        PartChoice choice = PartChoice.Between("LV-FIL-1", 14.50m, cheap, PartAlternative.Of("hose B", 9m, "fire rating"));
        Assert.Null(choice.Cheaper);
        Assert.Equal(["bypass opening pressure"], cheap.UnknownSafety);
        Assert.Equal(8.50m, cheap.SavingAgainst(14.50m));
        Assert.Equal("take the original, LV-FIL-1", choice.ToString());
        Assert.Equal("F1 saves 4.50 against LV-FIL-1", PartChoice.Between("LV-FIL-1", 14.50m, PartAlternative.Of(FilterComparisonTest.Need().Compare(FilterComparisonTest.Good()), 10m)).ToString());
    }

    private static (decimal Needed, PackOffer[] Offers) Draw(Random random, int most) => (
        random.Next(0, 121) / 10m,
        [.. Enumerable.Range(0, random.Next(1, most + 1)).Select(i => PackOffer.Of($"p{i}", random.Next(2, 13) * 0.5m, random.Next(0, 30) / 2m))]);

    // Every multiset of packs: each pack zero or more times, then the next; the least of price, amount, number of packs.
    private static (decimal Price, decimal Amount, int Packs) Exhaustive(decimal needed, PackOffer[] offers, int from)
    {
        if (needed <= 0)
        {
            return (0, 0, 0);
        }

        if (from == offers.Length)
        {
            return (decimal.MaxValue / 2, 0, 0);
        }

        (decimal Price, decimal Amount, int Packs) best = (decimal.MaxValue / 2, 0, 0);
        int atMost = (int)decimal.Ceiling(needed / offers[from].Amount);
        for (int count = 0; count <= atMost; count++)
        {
            (decimal price, decimal amount, int packs) = Exhaustive(needed - (count * offers[from].Amount), offers, from + 1);
            (decimal, decimal, int) whole = (price + (count * offers[from].Price), amount + (count * offers[from].Amount), packs + count);
            best = whole.CompareTo(best) < 0 ? whole : best;
        }

        return best;
    }
}
