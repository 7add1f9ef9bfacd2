using MarineService.Core.Procedures;

namespace MarineService.Core.Tests.Procedures;

/// <summary>Second methods for orders: plain searches over the steps' own lists of predecessors, nothing shared with the code.</summary>
internal static class Orders
{
    internal static Circumstances Petrol { get; } = Circumstances.Unknown.With(Circumstance.Petrol, true)
        .With(Circumstance.BeltBeforePump, true).With(Circumstance.Seacock, true).With(Circumstance.RawWaterCooled, false);

    internal static Circumstances Diesel { get; } = Circumstances.Unknown.With(Circumstance.Petrol, false)
        .With(Circumstance.BeltBeforePump, false).With(Circumstance.Seacock, true).With(Circumstance.RawWaterCooled, false);

    /// <summary>Whether a walk back from the one meets the other.</summary>
    internal static bool Reaches(Procedure procedure, string first, string then)
    {
        Dictionary<string, ProcedureStep> steps = procedure.Steps.ToDictionary(step => step.Id);
        Stack<string> look = new(steps[then].Predecessors);
        HashSet<string> seen = [];
        while (look.Count > 0)
        {
            string id = look.Pop();
            if (id == first)
            {
                return true;
            }

            if (seen.Add(id))
            {
                foreach (string before in steps[id].Predecessors)
                {
                    look.Push(before);
                }
            }
        }

        return false;
    }

    /// <summary>An order that keeps the edges, taken at random.</summary>
    internal static IReadOnlyList<string> AtRandom(Procedure procedure, Random random)
    {
        List<ProcedureStep> left = [.. procedure.Steps];
        List<string> order = [];
        while (left.Count > 0)
        {
            ProcedureStep[] ready = [.. left.Where(step => step.Predecessors.All(order.Contains))];
            ProcedureStep next = ready[random.Next(ready.Length)];
            left.Remove(next);
            order.Add(next.Id);
        }

        return order;
    }

    /// <summary>Proofs that pass for every hold point of a step.</summary>
    internal static StepProof[] ProofsOf(ProcedureStep step) =>
    [
        .. step.HoldPoints.Select(point =>
        {
            StepProof proof = StepProof.Passed(point.Id);
            proof = point.LeastTime is UnitsNet.Duration least ? proof.WithTime(least) : proof;
            proof = point.CountsToZero ? proof.WithMissing(0) : proof;
            return point.IsWritten ? proof.WithNote("written") : proof;
        }),
    ];

    /// <summary>A procedure with random edges forward, random acts, looks, replacements and accesses.</summary>
    internal static Procedure Random(string id, Random random, int most = 12)
    {
        int count = random.Next(2, most);
        List<ProcedureStep> steps = [];
        for (int i = 0; i < count; i++)
        {
            // Few names, so that procedures share steps; the numbers keep shared edges one way.
            int number = (i * 3) + random.Next(3);
            ProcedureStep step = ProcedureStep.Of($"s{number:00}", $"step {number}")
                .After([.. steps.Where(_ => random.Next(3) == 0).Select(before => before.Id)])
                .With(HoldPoint.Confirmed($"h{number}-{random.Next(2)}", "so"))
                .With(Caution.Of((SignalWord)random.Next(4), $"mind {random.Next(5)}", Citation.CommonPractice));
            step = random.Next(6) switch
            {
                0 => step.Inspecting($"item{random.Next(2)}"),
                1 => step.Replacing($"item{random.Next(2)}"),
                2 => step.Taking(UnitsNet.Duration.FromMinutes(random.Next(1, 9))),
                _ => step,
            };
            steps.Add(step);
        }

        return Procedure.Of(id, id, steps);
    }
}
