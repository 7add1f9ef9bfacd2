using MarineService.Core.Procedures;
using NodaTime;

namespace MarineService.Core.Tests.Surface;

/// <content>What only procedures make.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfProcedures()
    {
        Circumstances known = Circumstances.Unknown.With(Circumstance.Petrol, false).With(Circumstance.Seacock, true)
            .With(Circumstance.BeltBeforePump, false).With(Circumstance.RawWaterCooled, false);
        Procedure procedure = ServiceProcedures.FuelFilter.For(known);
        WorkRecord work = WorkRecord.Begin(procedure, new LocalDate(2026, 10, 12)).Do("read-dial", StepProof.Passed("dial").WithNote("512.0 h"));
        return
        [
            procedure, work, work.Last!, known, HarmRule.All[0], StepProof.Passed("dial"), HoldPoint.Confirmed("dial", "read"),
            Tool.Of("spanner"), ProcedureStep.Of("crank", "Crank").After("alternator"),
        ];
    }
}
