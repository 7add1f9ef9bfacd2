using System.Security.Cryptography;
using System.Text;

namespace MarineService.Reports.Calendars;

/// <summary>Universally unique identifiers from a name: the same name gives the same identifier, anywhere. Source: RFC 9562, section 5.5 (version 5).</summary>
internal static class NameBasedUuid
{
    private const int Length = 16;
    private const string Digits = "0123456789abcdef";

    /// <summary>The identifier of a name within a namespace, both as RFC 9562 writes them: 32 hexadecimal digits in five groups.</summary>
    internal static string Of(string space, string name)
    {
        byte[] hash = Hash([.. Bytes(space), .. Encoding.UTF8.GetBytes(name)]);
        hash[6] = (byte)((hash[6] & 0x0F) | 0x50);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        StringBuilder text = new();
        for (int i = 0; i < Length; i++)
        {
            // Groups of 8, 4, 4, 4 and 12 digits.
            text.Append(i is 4 or 6 or 8 or 10 ? "-" : "").Append(Digits[hash[i] >> 4]).Append(Digits[hash[i] & 0x0F]);
        }

        return text.ToString();
    }

    private static byte[] Hash(byte[] bytes)
    {
#pragma warning disable CA5350, CA1850 // SHA-1 is what the version is defined by, and keeps nothing secret; HashData is not part of .NET Standard 2.0.
        using SHA1 sha = SHA1.Create();
        return sha.ComputeHash(bytes);
#pragma warning restore CA5350, CA1850
    }

    private static byte[] Bytes(string uuid)
    {
        int[] digits = [.. uuid.Where(c => c != '-').Select(c => c <= '9' ? c - '0' : c - 'a' + 10)];
        byte[] bytes = new byte[Length];
        for (int i = 0; i < Length; i++)
        {
            bytes[i] = (byte)((digits[2 * i] << 4) | digits[(2 * i) + 1]);
        }

        return bytes;
    }
}
