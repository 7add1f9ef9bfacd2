using MarineService.Core.Fleet;

namespace MarineService.Core.Tests.Fleet;

public sealed class PartitionKeyTest
{
    /// <summary>Source: FNV-1a 64-bit test vectors, draft-eastlake-fnv, appendix C (values from memory of the published list).</summary>
    [Theory]
    [InlineData("a", 0xaf63dc4c8601ec8cUL)]
    [InlineData("b", 0xaf63df4c8601f1a5UL)]
    [InlineData("foobar", 0x85944171f73967e8UL)]
    public void Key_OfAPublishedVector_IsAsPublished(string text, ulong key) => Assert.Equal(key, PartitionKey.Of(text));

    [Fact]
    public void Key_OfTextBeyondAscii_IsThatOfItsUtf8() =>
        Assert.Equal(PartitionKey.Hash([0xC3, 0xA9]), PartitionKey.Of("é"));

    [Fact]
    public void Partition_OfManyIds_SpreadsEvenly()
    {
        int[] counts = new int[64];
        for (int i = 0; i < 64_000; i++)
        {
            counts[PartitionKey.Of($"E-{i}", 64)]++;
        }

        // A thousand each on average; five standard deviations of a fair spread.
        Assert.All(counts, count => Assert.InRange(count, 840, 1160));
    }

    [Fact]
    public void Partitions_OutOfRange_AreRefused() =>
        Assert.Equal("partitions", Assert.Throws<ArgumentOutOfRangeException>(() => PartitionKey.Of("E-1", 0)).ParamName);
}
