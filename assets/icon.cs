// Draws assets/icon.png, the icon of the package: a belt round two pulleys above the water line.
// Run it from the repository's root: dotnet run assets/icon.cs
#:property TreatWarningsAsErrors=false
#:property RunAnalyzers=false
#:property EnforceCodeStyleInBuild=false
#:property RestorePackagesWithLockFile=false
#:property SignAssembly=false
using System.Buffers.Binary;
using System.IO.Compression;

const int Size = 128;
const int Samples = 4;
byte[] pixels = new byte[Size * ((Size * 4) + 1)];
for (int y = 0; y < Size; y++)
{
    for (int x = 0; x < Size; x++)
    {
        double red = 0, green = 0, blue = 0, cover = 0;
        for (int i = 0; i < Samples * Samples; i++)
        {
            (double r, double g, double b, double a) = Color(x + (((i % Samples) + 0.5) / Samples), y + (((i / Samples) + 0.5) / Samples));
            (red, green, blue, cover) = (red + (r * a), green + (g * a), blue + (b * a), cover + a);
        }

        int at = (y * ((Size * 4) + 1)) + 1 + (x * 4);
        double share = Math.Max(cover, 1e-9);
        (pixels[at], pixels[at + 1], pixels[at + 2], pixels[at + 3]) =
            ((byte)Math.Round(red / share), (byte)Math.Round(green / share), (byte)Math.Round(blue / share), (byte)Math.Round(255 * cover / (Samples * Samples)));
    }
}

using FileStream file = File.Create("assets/icon.png");
file.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10]);
byte[] header = new byte[13];
BinaryPrimitives.WriteInt32BigEndian(header, Size);
BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), Size);
(header[8], header[9]) = (8, 6);
Chunk(file, "IHDR", header);
using MemoryStream packed = new();
using (ZLibStream zip = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
{
    zip.Write(pixels);
}

Chunk(file, "IDAT", packed.ToArray());
Chunk(file, "IEND", []);

static (double R, double G, double B, double A) Color(double x, double y)
{
    (double, double, double, double) navy = (16, 42, 67, 1), water = (38, 132, 155, 1), belt = (240, 244, 248, 1), brass = (240, 180, 41, 1);
    if (OutsideRoundedSquare(x, y))
    {
        return (0, 0, 0, 0);
    }

    double big = Hypot(x - 44, y - 50), small = Hypot(x - 92, y - 50);
    if (big < 7 || small < 4)
    {
        return navy;
    }

    if (big < 24 || small < 13)
    {
        return brass;
    }

    // The belt lies on the outer tangents of the two circles: a band round the hull of both.
    double hull = HullDistance(x, y);
    if (hull > 1.5 && hull < 6.5)
    {
        return belt;
    }

    double surface = 98 + (3.5 * Math.Sin(x / 128 * 6 * Math.PI));
    return y > surface ? water : navy;
}

// Distance from the hull of the circles round (44, 50) with 24 and (92, 50) with 13; negative inside.
static double HullDistance(double x, double y)
{
    double sine = (24 - 13) / 48.0, cosine = Math.Sqrt(1 - (sine * sine));
    double along = x - 44, off = Math.Abs(y - 50);
    double t = (along * cosine) - (off * sine);
    double length = 48 * cosine;
    return t < 0 ? Hypot(along, off) - 24
        : t > length ? Hypot(along - 48, off) - 13
        : (along * sine) + (off * cosine) - 24;
}

static bool OutsideRoundedSquare(double x, double y)
{
    double dx = Math.Max(Math.Abs(x - 64) - 42, 0), dy = Math.Max(Math.Abs(y - 64) - 42, 0);
    return Hypot(dx, dy) > 22;
}

static void Chunk(Stream file, string name, byte[] data)
{
    byte[] body = [.. System.Text.Encoding.ASCII.GetBytes(name), .. data];
    byte[] number = new byte[4];
    BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
    file.Write(number);
    file.Write(body);
    BinaryPrimitives.WriteUInt32BigEndian(number, Crc(body));
    file.Write(number);
}

static uint Crc(byte[] data)
{
    uint crc = 0xFFFFFFFF;
    foreach (byte value in data)
    {
        crc ^= value;
        for (int k = 0; k < 8; k++)
        {
            crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }
    }

    return ~crc;
}

static double Hypot(double a, double b) => Math.Sqrt((a * a) + (b * b));
