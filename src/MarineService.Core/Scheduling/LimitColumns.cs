namespace MarineService.Core.Scheduling;

/// <summary>The limits of a stretch of rows laid out as columns, so that several rows can be judged at a time.</summary>
internal readonly ref struct LimitColumns(Span<int> room)
{
    /// <summary>How many rows a stretch has at most; few enough to stay near the processor.</summary>
    internal const int MostRows = 64;

    /// <summary>How many numbers the columns take.</summary>
    internal const int Room = 4 * MostRows;

    private readonly Span<int> _room = room;

    internal Span<int> SoonDays => _room.Slice(0, MostRows);

    internal Span<int> ToleranceDays => _room.Slice(MostRows, MostRows);

    internal Span<int> SoonThousandths => _room.Slice(2 * MostRows, MostRows);

    internal Span<int> ToleranceThousandths => _room.Slice(3 * MostRows, MostRows);

    internal DueLimits this[int row] => new(SoonDays[row], ToleranceDays[row], SoonThousandths[row], ToleranceThousandths[row]);

    /// <summary>Lays out the limits of a stretch.</summary>
    internal void Take(ReadOnlySpan<DueLimits> table, ReadOnlySpan<ushort> codes, int firstRow)
    {
        // Cut to one length, so that no access needs a check of its own.
        Span<int> soonDays = SoonDays.Slice(0, codes.Length);
        Span<int> toleranceDays = ToleranceDays.Slice(0, codes.Length);
        Span<int> soonThousandths = SoonThousandths.Slice(0, codes.Length);
        Span<int> toleranceThousandths = ToleranceThousandths.Slice(0, codes.Length);
        for (int i = 0; i < codes.Length; i++)
        {
            int code = codes[i];
            if (code >= table.Length)
            {
                throw new ArgumentOutOfRangeException(
                    nameof(codes), code, FormattableString.Invariant($"Row {firstRow + i}: must be the number of limits in the table, 0 to {table.Length - 1}."));
            }

            ref readonly DueLimits limits = ref table[code];
            soonDays[i] = limits.SoonDays;
            toleranceDays[i] = limits.ToleranceDays;
            soonThousandths[i] = limits.SoonThousandths;
            toleranceThousandths[i] = limits.ToleranceThousandths;
        }
    }
}
