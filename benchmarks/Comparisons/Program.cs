using BenchmarkDotNet.Running;
using MarineService.Core.Comparisons;

// The solver takes minutes for a case: it is run once and timed, not again and again.
if (args is ["visits"])
{
    return VisitsByConstraintSolver.Run(Console.Out) ? 0 : 1;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
