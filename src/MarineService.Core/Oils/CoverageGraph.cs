namespace MarineService.Core.Oils;

/// <summary>One published statement: this category covers that one.</summary>
internal sealed class CoverageEdge(ServiceCategory from, ServiceCategory to, Citation citation)
{
    internal ServiceCategory From { get; } = from;

    internal ServiceCategory To { get; } = to;

    internal Citation Citation { get; } = citation;
}

/// <summary>The stated coverage as a directed graph. Paths are searched breadth first: the shortest one needs the least trust.</summary>
internal static class CoverageGraph
{
    internal static readonly IReadOnlyList<CoverageEdge> Edges = Array.AsReadOnly<CoverageEdge>(
    [
        .. from row in CategoryTable.Stated
           from to in row.To
           select new CoverageEdge(CategoryTable.Named(row.From), CategoryTable.Named(to), row.Citation),
    ]);

    /// <summary>The shortest path, or an empty list; it never passes through a forbidden category.</summary>
    internal static IReadOnlyList<CoverageEdge> PathBetween(ServiceCategory from, ServiceCategory to, IReadOnlyList<ServiceCategory> forbidden)
    {
        Dictionary<ServiceCategory, CoverageEdge> reachedBy = [];
        Queue<ServiceCategory> queue = new([from]);
        while (queue.Count > 0)
        {
            ServiceCategory at = queue.Dequeue();
            foreach (CoverageEdge edge in Edges)
            {
                bool isNew = edge.From == at && edge.To != from && !reachedBy.ContainsKey(edge.To) && (edge.To == to || !forbidden.Contains(edge.To));
                if (isNew)
                {
                    reachedBy[edge.To] = edge;
                    queue.Enqueue(edge.To);
                }
            }
        }

        List<CoverageEdge> path = [];
        for (ServiceCategory at = to; reachedBy.TryGetValue(at, out CoverageEdge? edge); at = edge.From)
        {
            path.Insert(0, edge);
        }

        return path;
    }

    /// <summary>Every category that stated coverage reaches, in the order of the table.</summary>
    internal static IReadOnlyList<ServiceCategory> ReachedFrom(ServiceCategory from) =>
        [.. CategoryTable.All.Where(to => to != from && PathBetween(from, to, []).Count > 0)];
}
