using MarineService.Core.Cooling;
using MarineService.Core.Procedures;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Jobs;

/// <summary>What stands against a visit on the raw-water side: the first seconds of the run, the old impeller, the bucket test.</summary>
internal static class JobWater
{
    // Common practice: raw water leaves some 15 K warmer than it came.
    private const double UsualRiseKelvins = 15;

    internal static IEnumerable<Finding> FindingsOf(JobCard card, JobMeasurements given) =>
        (given.Start?.Findings ?? []).Concat(Impeller(card, given)).Concat(Bucket(card, given));

    private static IEnumerable<Finding> Impeller(JobCard card, JobMeasurements given)
    {
        if (given.Impeller is not ImpellerInspection seen)
        {
            yield break;
        }

        ImpellerAssessment judged = seen.Judge();
        WorkRecord work = given.Work;
        bool wereSought = work.Circumstances[Circumstance.PiecesMissing] == true && work.Procedure.Steps.Any(step => step.Condition == Circumstance.PiecesMissing && work.HasDone(step.Id));
        if (judged.Account.IsShort && work.Circumstances[Circumstance.PiecesMissing] == false)
        {
            yield return JobRules.PiecesNotSought.On("impeller", Figure.Of("account", judged.Account.ToString()));
        }

        // A new impeller makes what was wrong with the old one history, but not the pieces that are still somewhere in the circuit.
        bool isReplaced = card.Tasks.Any(task => task.Due.Task.Action == TaskAction.Replace && task.How is TaskProcedure how
            && how.ProvedBy.Any(id => card.Procedure.Find(id) is { Work: StepWork.Replace, Item: "impeller" } && work.HasDone(id)));
        foreach (Finding finding in judged.Findings)
        {
            bool isAccount = finding.Rule == ImpellerRules.PiecesOutstanding || finding.Rule == ImpellerRules.PiecesOver;
            if (isAccount ? !wereSought : !isReplaced || finding.Rule == ImpellerRules.NotLookedAt)
            {
                yield return finding;
            }
        }

        foreach (JobTask task in card.Tasks.Where(task => task.NeedsVerdict && LooksAtTheImpeller(card, task) && given.Verdicts.TryGetValue(task.TaskId, out bool passed) && passed))
        {
            if (judged.Verdict is { IsKnown: true, Value: not ImpellerVerdict.InspectAgain })
            {
                yield return JobRules.VerdictContradicted.On($"task '{task.TaskId}'", Figure.Of("what", judged.Explain(DisplayUnits.Metric).Answer));
            }
        }
    }

    private static bool LooksAtTheImpeller(JobCard card, JobTask task) =>
        task.How!.ProvedBy.Any(id => card.Procedure.Find(id) is { Decides: Circumstance.PiecesMissing });

    /// <summary>Against each rating that the engine may have: what is too little for all of them stands, what is too little for some is asked.</summary>
    private static IEnumerable<Finding> Bucket(JobCard card, JobMeasurements given)
    {
        if (given.Bucket is not BucketTest test)
        {
            return [];
        }

        EngineSpecification engine = card.Engine.Specification;
        (EngineVariant Variant, BucketCheck Check)[] checks =
        [
            .. from variant in engine.Variants
               let heat = HeatToWater.Of(variant.RatedPower, engine.Engine.Fuel)
               where heat.IsKnown
               let need = heat.Value.FlowFor(TemperatureDelta.FromKelvins(UsualRiseKelvins), card.Boat.Boat.Water)
               orderby need.LitersPerMinute
               select (variant, test.Judge(need, variant.RatedSpeed, engine.RawWater?.Pump, engine.RawWater?.Circuit)),
        ];
        if (checks.Length == 0)
        {
            return [NotJudged("the rated power, the rated speed and the fuel of the engine")];
        }

        string[] little = [.. checks.Where(one => !one.Check.IsEnough).Select(one => one.Variant.Designation)];
        return little.Length == 0 || little.Length == checks.Length
            ? checks[0].Check.Findings
            : [NotJudged($"which rating the engine has: it is too little for {string.Join(", ", little)}")];
    }

    private static Finding NotJudged(string what) => JobRules.NotJudged.On("bucket test", Figure.Of("what", what));
}
