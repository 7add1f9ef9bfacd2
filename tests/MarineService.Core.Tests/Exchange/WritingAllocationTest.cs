using System.Buffers;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Writing into a caller's buffer allocates nothing per entry, of whatever kind.</summary>
public sealed class WritingAllocationTest
{
    private static readonly LocalDate Day = new(2024, 5, 1);

    [Theory]
    [InlineData("reading")]
    [InlineData("completion")]
    [InlineData("partial")]
    [InlineData("event")]
    [InlineData("duty")]
    [InlineData("top-up")]
    [InlineData("lay-up")]
    [InlineData("meter change")]
    [InlineData("rebuild")]
    [InlineData("opening")]
    [InlineData("withdrawal")]
    public void ServiceLog_WrittenToABuffer_AllocatesNothingPerEntry(string kind)
    {
        ServiceLog few = Log(kind, 50);
        ServiceLog many = Log(kind, 500);
        ArrayBufferWriter<byte> buffer = new(1 << 21);
        long first = Bytes(few, buffer);
        Assert.True(buffer.WrittenCount > 50 * 40, "nothing was written");
        Assert.Equal(first, Bytes(many, buffer));
    }

    private static ServiceLog Log(string kind, int entries) => ServiceLog.Of(Enumerable.Range(0, entries).SelectMany(i => Entries(kind, i)));

    private static IEnumerable<LogEntry> Entries(string kind, int i)
    {
        LocalDate date = Day.PlusDays(i);
        EngineHours dial = EngineHours.FromHours(500m + (i * 0.7m));
        if (kind == "withdrawal")
        {
            return [LogEntry.Of(MeterReading.Of(date, dial)).WithId($"wrong-{i}"), LogEntry.Withdrawing($"wrong-{i}", date)];
        }

        ServiceFact fact = kind switch
        {
            "reading" => MeterReading.Of(date, dial, ReadingSource.Log),
            "completion" => Completion.Passed("impeller", date, dial),
            "partial" => Completion.Partial("engine-oil", date, dial, 0.93m, 0.01m),
            "event" => ServiceEvent.Of("overheat", date, dial),
            "duty" => DutyChange.Of(date, ["towing", "salt"], dial),
            "top-up" => TopUp.Of("engine-oil", date, MeasuredVolume.Of(Volume.FromLiters(0.5), Temperature.FromDegreesCelsius(15), Volume.FromLiters(0.05)), dial),
            "lay-up" => PlannedLayUp.Between(date, date.PlusDays(100)),
            "meter change" => MeterChange.Of(date, dial, EngineHours.FromHours(1m), dial, date, HourMeter.Of(EngineHours.FromHours(1000m), MeterDrive.Key)),
            "rebuild" => EnteredService.AfterRebuild(date, dial, dial),
            _ => OpeningDuePoint.Of(date, "impeller", date.PlusDays(30), dial),
        };
        return
        [
            LogEntry.Of(fact).DoneBy("M. Kerr").WithChecker("J. Tait").WithNote("Warm; née Ødegård.").AsReconstructed()
                .WithEvidence(Evidence.Of(EvidenceKind.Receipt, "chandler 118", new string('a', 64))),
        ];
    }

    private static long Bytes(ServiceLog log, ArrayBufferWriter<byte> buffer) => Allocation.Of(() =>
    {
        buffer.ResetWrittenCount();
        ServiceLogJson.Write(log, buffer);
    });
}
