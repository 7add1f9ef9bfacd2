using BenchmarkDotNet.Attributes;
using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Benchmarks.Procedures;

/// <summary>Steps checked one after the other as they are done, against plain marks in a list of flags. The time grows with the steps, no faster.</summary>
[MemoryDiagnoser]
public class WorkRecordBenchmarks
{
    private static readonly LocalDate Day = new(2027, 4, 20);

    private Procedure _procedure = null!;
    private StepProof[][] _proofs = null!;

    [Params(50, 200, 800)]
    public int Steps { get; set; }

    [GlobalSetup]
    public void Build()
    {
        _procedure = Procedure.Of("chain", "Chain", Enumerable.Range(0, Steps).Select(i =>
            ProcedureStep.Of($"s{i:000}", "Do it").With(HoldPoint.Confirmed("so", "It is so"))
                .After(i == 0 ? [] : i == 1 ? ["s000"] : [$"s{i - 1:000}", $"s{i - 2:000}"])));
        _proofs = [.. _procedure.Steps.Select(step => step.HoldPoints.Select(point => StepProof.Passed(point.Id)).ToArray())];
        _ = _procedure.IsSound;
    }

    /// <summary>What a list on paper does: the step is there, the ones before it are ticked.</summary>
    [Benchmark(Baseline = true)]
    public int TickAList()
    {
        Dictionary<string, bool> done = [];
        int ticked = 0;
        foreach (ProcedureStep step in _procedure.Steps)
        {
            bool ready = true;
            foreach (string before in step.Predecessors)
            {
                ready &= done.ContainsKey(before);
            }

            done[step.Id] = ready;
            ticked += ready ? 1 : 0;
        }

        return ticked;
    }

    [Benchmark]
    public WorkRecord DoEveryStep()
    {
        WorkRecord work = WorkRecord.Begin(_procedure, Day);
        for (int i = 0; i < _procedure.Steps.Count; i++)
        {
            work = work.Do(_procedure.Steps[i].Id, _proofs[i]);
        }

        return work;
    }
}
