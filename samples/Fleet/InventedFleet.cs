using System.Buffers;
using System.Globalization;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace Fleet;

/// <summary>A fleet of any size from a seed, as a stream of NDJSON that is made while it is read; always the same for the same seed.</summary>
internal sealed class InventedFleet(long engines, int seed, LocalDate today) : Stream
{
    private static readonly string[] Sheets = ["corrie-60p", "corrie-24p", "brae-16d"];

    private static readonly string[] Depots = ["east", "north", "south", "west"];

    private static readonly string[] Tasks = ["engine-oil", "impeller-look", "impeller", "belt", "coolant", "fuel-filter", "anodes"];

    private readonly ArrayBufferWriter<byte> _line = new();
    private int _given;
    private long _made;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int filled = 0;
        while (filled < buffer.Length && (_given < _line.WrittenCount || MakeLine()))
        {
            ReadOnlySpan<byte> rest = _line.WrittenSpan[_given..];
            int taken = Math.Min(rest.Length, buffer.Length - filled);
            rest[..taken].CopyTo(buffer[filled..]);
            _given += taken;
            filled += taken;
        }

        return filled;
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        Task.FromResult(Read(buffer, offset, count));

    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) => new(Read(buffer.Span));

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private bool MakeLine()
    {
        if (_made == engines)
        {
            return false;
        }

        _line.ResetWrittenCount();
        FleetEngineJson.Write(Engine(++_made), _line);
        _line.Write("\n"u8);
        _given = 0;
        return true;
    }

    // Three to six years of a working life: a reading each few weeks, a service when somebody thought of it.
    private FleetEngine Engine(long number)
    {
        Random random = new(HashCode(number));
        List<LogEntry> entries = [];
        LocalDate date = today.PlusDays(-random.Next(1100, 2200));
        long dial = random.Next(0, 400_000);
        entries.Add(LogEntry.Of(EnteredService.New(date, EngineHours.FromHours(dial / 1000m))));
        int perDay = random.Next(200, 2500);
        while (date < today)
        {
            int days = random.Next(20, 120);
            date = date.PlusDays(days);
            dial += (long)days * perDay * random.Next(0, 3) / 2;
            if (date >= today)
            {
                break;
            }

            EngineHours hours = EngineHours.FromHours(dial / 1000m);
            ServiceFact fact = random.Next(3) == 0
                ? MeterReading.Of(date, hours)
                : Completion.Of(Tasks[random.Next(Tasks.Length)], date, random.Next(8) == 0 ? null : hours);
            entries.Add(LogEntry.Of(fact));
        }

        return FleetEngine.Of(
            string.Create(CultureInfo.InvariantCulture, $"E-{number:00000000}"),
            Sheets[random.Next(Sheets.Length)],
            ServiceLog.Of(entries),
            Depots[random.Next(Depots.Length)]);
    }

    // Any two numbers that differ in one bit must give lives that have nothing in common.
    private int HashCode(long number)
    {
        ulong mixed = unchecked(((ulong)number * 0x9E37_79B9_7F4A_7C15UL) ^ ((ulong)(uint)seed << 32));
        mixed = unchecked((mixed ^ (mixed >> 30)) * 0xBF58_476D_1CE4_E5B9UL);
        return (int)(mixed >> 33);
    }
}
