using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using NodaTime.Text;

namespace Fleet;

/// <summary>Judges one engine with the library; remembers nothing, so that a question may be asked twice.</summary>
public sealed class EngineGrain : Grain, IEngineGrain
{
    public async Task<EngineAnswer> JudgeAsync(byte[] line, long number, string today)
    {
        FleetEvaluation evaluation = FleetEvaluation.Of(Catalogue.Invented, LocalDatePattern.Iso.Parse(today).Value);
        using MemoryStream input = new(line);
        using MemoryStream output = new();
        FleetTally tally = new();
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(input, evaluation, firstLine: number))
        {
            output.Write(batch.Output.Span);
            tally.Add(batch.Summary);
        }

        return new(output.ToArray(), Encoding.UTF8.GetBytes(FleetSummaryJson.ToText(tally.ToSummary())));
    }
}
