using System.Text;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Damages the text of a document: bytes flipped, cut, doubled, moved, or not of this document at all.</summary>
internal static class TextMutation
{
    private static readonly string[] Snippets =
    [
        "\"", "\\", "\\u0000", "\\ud800", "\\uDC00\\ud800", "{", "}", "[", "]", ",", ":", "null", "true", "-", ".", "1e400", "-1e400", "1e-400", "1E+2", "0.1234567890123456789012345678901",
        "100.00000000000000000000000000000001", "00", "+1", "NaN", "Infinity", "'", "//", "/*", " ", "\t", "\n", "\u00a0", "\u2028", "\uFEFF", "é", "😀", "\"id\":\"x\",", "\"format\":\"x\",", "\"date\":\"2026-04-01\",",
    ];

    internal static byte[] Of(byte[] utf8, Random random)
    {
        List<byte> text = [.. utf8];
        for (int changes = 1 + random.Next(3); changes > 0; changes--)
        {
            int at = random.Next(text.Count + 1);
            int length = Math.Min(random.Next(1, 40), text.Count - at);
            switch (random.Next(8))
            {
                case 0 when at < text.Count:
                    text[at] = (byte)random.Next(256);
                    break;
                case 1 when at < text.Count:
                    text[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 2:
                    text.RemoveRange(at, length);
                    break;
                case 3:
                    text.InsertRange(random.Next(text.Count + 1), text.GetRange(at, length));
                    break;
                case 4:
                    text.InsertRange(at, Encoding.UTF8.GetBytes(Snippets[random.Next(Snippets.Length)]));
                    break;
                case 5:
                    DoubleALine(text, random);
                    break;
                case 6:
                    text.InsertRange(at, Bytes(random, random.Next(1, 8)));
                    break;
                default:
                    text.RemoveRange(at, text.Count - at);
                    break;
            }
        }

        return [.. text];
    }

    internal static byte[] Bytes(Random random, int count)
    {
        byte[] bytes = new byte[count];
        random.NextBytes(bytes);
        return bytes;
    }

    // A line of a document is mostly one member: doubled, it is a member that stands twice.
    private static void DoubleALine(List<byte> text, Random random)
    {
        int start = text.IndexOf((byte)'\n', random.Next(text.Count + 1));
        int end = start < 0 ? -1 : text.IndexOf((byte)'\n', start + 1);
        if (end > start)
        {
            text.InsertRange(end, text.GetRange(start, end - start));
        }
    }
}
