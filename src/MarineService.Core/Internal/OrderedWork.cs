using System.Runtime.CompilerServices;

namespace MarineService.Core.Internal;

/// <summary>Spreads work over threads and gives the results in the order of the input, holding no more of it than the threads need.</summary>
internal static class OrderedWork
{
    internal const int MaxWorkers = 1024;

    internal static async IAsyncEnumerable<List<T>> InBatches<T>(
        IAsyncEnumerable<T> items, int size, [EnumeratorCancellation] CancellationToken cancellation)
    {
        List<T> batch = new(size);
        await foreach (T item in items.WithCancellation(cancellation).ConfigureAwait(false))
        {
            batch.Add(item);
            if (batch.Count == size)
            {
                yield return batch;
                batch = new(size);
            }
        }

        if (batch.Count > 0)
        {
            yield return batch;
        }
    }

    internal static async IAsyncEnumerable<TResult> Run<T, TResult>(
        IAsyncEnumerable<T> items, Func<T, TResult> work, int workers, [EnumeratorCancellation] CancellationToken cancellation)
    {
        Queue<Task<TResult>> running = new();
        await foreach (T item in items.WithCancellation(cancellation).ConfigureAwait(false))
        {
            cancellation.ThrowIfCancellationRequested();
            if (workers == 1)
            {
                yield return work(item);
                continue;
            }

            running.Enqueue(Task.Run(() => work(item), cancellation));
            if (running.Count > workers)
            {
                yield return await running.Dequeue().ConfigureAwait(false);
            }
        }

        while (running.Count > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            yield return await running.Dequeue().ConfigureAwait(false);
        }
    }
}
