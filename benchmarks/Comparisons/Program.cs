using MarineService.Comparisons;

// Each comparison is a file of its own and is named by its argument; without one all are run.
string[] wanted = args.Length > 0 ? args : ["visits"];
bool agree = true;
foreach (string name in wanted)
{
    agree &= name switch
    {
        "visits" => VisitsByConstraintSolver.Run(Console.Out),
        _ => throw new ArgumentException($"No comparison is named '{name}'. There is: visits."),
    };
}

return agree ? 0 : 1;
