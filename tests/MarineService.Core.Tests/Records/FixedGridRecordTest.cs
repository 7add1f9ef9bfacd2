using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Records;

/// <summary>A survey of every six months from 2021-04-01: windows of 18 days each side, dates that nobody moves.</summary>
public sealed class FixedGridRecordTest
{
    private static readonly EngineSpecification Specification = EngineSpecification.Named("Corrie 60P")
        .With(ServiceTask.Inspect("survey", ServiceInterval.OfMonths(6)).WithAnchorPolicy(AnchorPolicy.FixedGrid));

    private static readonly ServiceLog Log = ServiceLog.Empty.With(GridOrigin.Of(new(2021, 4, 1), "survey"));

    [Theory]
    [InlineData(-19, "2021-10-01")]
    [InlineData(-18, "2022-04-01")]
    [InlineData(0, "2022-04-01")]
    [InlineData(18, "2022-04-01")]
    [InlineData(163, "2022-04-01")]
    [InlineData(164, "2022-10-01")]
    public void Completion_ClosesTheDatesWhoseWindowItHasReached(int days, string next)
    {
        // The window of 2022-04-01 opens on 2022-03-14, 164 days after 2021-10-01.
        LocalDate done = new LocalDate(2021, 10, 1).PlusDays(days);
        Assert.Equal(next, Log.With(Completion.Passed("survey", done)).DueList(Specification, done)["survey"].Due.Date!.Value.ToString("uuuu-MM-dd", null));
    }

    [Theory]
    [InlineData(0, ComplianceVerdict.Kept)]
    [InlineData(1, ComplianceVerdict.KeptWithinTolerance)]
    [InlineData(18, ComplianceVerdict.KeptWithinTolerance)]
    [InlineData(19, ComplianceVerdict.Exceeded)]
    public void Completion_IsJudgedByTheDateThatItCloses(int days, ComplianceVerdict verdict)
    {
        LocalDate done = new LocalDate(2021, 10, 1).PlusDays(days);
        ComplianceItem item = Assert.Single(Log.With(Completion.Passed("survey", done)).Compliance(Specification, done, ComplianceBasis.Planning).Items);
        Assert.Equal(verdict, item.Verdict);
    }

    [Fact]
    public void DatesPassedOver_AreMissingOnce_AndTheLastOneIsDone()
    {
        LocalDate done = new(2022, 11, 15);
        ComplianceReport report = Log.With(Completion.Passed("survey", done)).Compliance(Specification, done, ComplianceBasis.Planning);
        Assert.Equal(
            [ComplianceVerdict.Missing, ComplianceVerdict.Missing, ComplianceVerdict.Exceeded], report.Items.Select(item => item.Verdict));
        Assert.Equal(45, report.Items[2].Occurrence.DaysLate);
        Assert.Equal("0 of 3 kept", report.ToString());
    }

    [Fact]
    public void StatedDate_IsADateOfTheGrid_AndTheNextOnesFollowIt()
    {
        ServiceLog bought = ServiceLog.Empty.With(OpeningDuePoint.Of(new(2024, 1, 5), "survey", new LocalDate(2024, 1, 31), null));
        TaskDue stated = bought.DueList(Specification, new(2024, 1, 20))["survey"];
        Assert.Equal((DueBasis.Opening, new LocalDate(2024, 1, 31)), (stated.Basis, stated.Due.Date));
        TaskDue next = bought.With(Completion.Passed("survey", new(2024, 2, 9))).DueList(Specification, new(2024, 2, 9))["survey"];
        Assert.Equal((DueBasis.Grid, new LocalDate(2024, 7, 31), DueStatus.NotDue), (next.Basis, next.Due.Date, next.Status));
    }
}
