using System.Text;
using System.Text.Json.Nodes;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Core.Tests.Procedures;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Procedures as documents: what is written reads back the same, and what could do harm is refused where it stands.</summary>
public sealed class ProcedureJsonTest
{
    private static readonly Circumstances[] Boats = [Circumstances.Unknown, Orders.Petrol, Orders.Diesel];

    public static TheoryData<string> Own => [.. ServiceProcedures.All.Select(one => one.Id)];

    [Theory]
    [MemberData(nameof(Own))]
    public void OwnProcedure_WrittenAndRead_IsTheSame_ForEveryBoat(string id)
    {
        foreach (Circumstances boat in Boats)
        {
            AssertSame(ProcedurePage.Of(ServiceProcedures.All.Single(one => one.Id == id).For(boat)));
        }
    }

    [Fact]
    public void OwnBook_AndAMergedVisit_WrittenAndRead_AreTheSame()
    {
        Assert.All(ProcedureBook.Usual.Tasks, task => AssertSame(ProcedurePage.Of(task.Procedure).Doing(task.TaskId, [.. task.ProvedBy])));
        AssertSame(ProcedurePage.Of(Procedure.Merge("visit", "Visit", ServiceProcedures.All)).Doing("belt-inspect", "belt-on"));
    }

    [Law]
    public void AnyProcedure_WrittenAndRead_IsTheSame(int seed)
    {
        Random random = new(seed);
        Procedure plain = Orders.Random("random", random, most: 20);
        Procedure rich = Procedure.Of("random", "Random", plain.Steps.Select(step => Enriched(step, random)), random.Next(2) == 0 ? Citation.Published("manual", "2") : null);
        rich = rich.For(random.Next(2) == 0 ? Circumstances.Unknown : Circumstances.Unknown.With(Circumstance.Petrol, random.Next(2) == 0));
        AssertSame(ProcedurePage.Of(rich).Doing("task", rich.Steps[0].Id));
    }

    [Fact]
    public void Circle_IsRefused_AndPrinted()
    {
        ReadFault fault = Assert.Single(Faults(Document(("a", []), ("b", ["a", "d"]), ("c", ["b"]), ("d", ["c"]), ("e", ["d"]))));
        Assert.Equal("/steps", fault.Place);
        Assert.Equal("b -> c -> d -> b", fault.Value);
    }

    [Fact]
    public void UnknownStep_IsNamedWhereItStands()
    {
        ReadFault fault = Assert.Single(Faults(Document(("a", []), ("b", ["a", "nowhere"]))));
        Assert.Equal(("/steps/1/after/1", "'nowhere'"), (fault.Place, fault.Value));
    }

    [Fact]
    public void CircleAndUnknownStep_AreToldTogether() =>
        Assert.Equal(["/steps", "/steps/0/after/0"], Faults(Document(("a", ["nowhere"]), ("b", ["c"]), ("c", ["b"]))).Select(fault => fault.Place).Order());

    [Fact]
    public void StepTwice_IsRefused()
    {
        ReadFault fault = Assert.Single(Faults(Document(("a", []), ("a", []))));
        Assert.Equal(("/steps/1/id", "'a'"), (fault.Place, fault.Value));
    }

    [Fact]
    public void OrderThatWouldDoHarm_IsRefused_WithTheHarm()
    {
        JsonObject document = Document(("open-drain", []), ("pour", []));
        Step(document, 0)["acts"] = new JsonArray("open-drain");
        Step(document, 1)["acts"] = new JsonArray("pour");
        IReadOnlyList<ReadFault> faults = Faults(document);
        Assert.Contains(faults, fault => fault.Place == "/steps/1" && fault.Value.Contains("right after 'open-drain'", StringComparison.Ordinal) && fault.Expected.Contains("runs into the bilge", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Place == "/steps/0" && fault.Expected.Contains("40 CFR 110", StringComparison.Ordinal));
        Step(document, 1)["acts"] = new JsonArray("pour", "prove-level");
        Assert.NotEmpty(Faults(document));
    }

    [Fact]
    public void OrderThatHarmsOnlyPetrolBoats_IsReadForADiesel()
    {
        JsonObject document = Document(("fuel-off", []), ("fuel-on", ["fuel-off"]));
        Step(document, 0)["acts"] = new JsonArray("open-fuel");
        Step(document, 1)["acts"] = new JsonArray("close-fuel");
        Assert.Equal("/steps/0", Assert.Single(Faults(document)).Place);
        document["known"] = new JsonArray(new JsonObject { ["circumstance"] = "petrol", ["holds"] = false });
        Assert.Empty(Faults(document));
        document["known"]!.AsArray().Add(new JsonObject { ["circumstance"] = "petrol", ["holds"] = false });
        Assert.Equal("/known/1/circumstance", Assert.Single(Faults(document)).Place);
    }

    [Fact]
    public void AccessThatStaysOpen_IsRefused()
    {
        JsonObject document = Document(("box-off", []), ("work", ["box-off"]));
        Step(document, 0)["opens"] = "box";
        Assert.Equal("/steps/0/opens", Assert.Single(Faults(document)).Place);
        Step(document, 1)["closes"] = "box";
        Assert.Empty(Faults(document));
    }

    [Fact]
    public void ProcedureOfWhichNothingIsLeft_IsRefused()
    {
        JsonObject document = Document(("a", []));
        Step(document, 0)["onlyIf"] = "petrol";
        document["known"] = new JsonArray(new JsonObject { ["circumstance"] = "petrol", ["holds"] = false });
        Assert.Equal("/known", Assert.Single(Faults(document)).Place);
    }

    [Fact]
    public void Tasks_NameStepsOfTheProcedure_EachTaskOnce()
    {
        JsonObject document = Document(("a", []));
        document["tasks"] = new JsonArray(
            new JsonObject { ["task"] = "coolant", ["provedBy"] = new JsonArray("a", "b") }, new JsonObject { ["task"] = "gear-oil", ["provedBy"] = new JsonArray("c") });
        Assert.Equal(["/tasks/0/provedBy/1", "/tasks/1/provedBy/0"], Faults(document).Select(fault => fault.Place));
        document["tasks"] = new JsonArray(
            new JsonObject { ["task"] = "coolant", ["provedBy"] = new JsonArray("a") }, new JsonObject { ["task"] = "coolant", ["provedBy"] = new JsonArray("a") });
        Assert.Equal("/tasks/1/task", Assert.Single(Faults(document)).Place);
    }

    [Fact]
    public void FaultsOfShape_AreAllTold_EachAtItsPlace()
    {
        JsonObject document = Document(("a", []), ("b", []));
        document.Remove("title");
        Step(document, 0)["onlyIf"] = "petrol";
        Step(document, 0)["unless"] = "seacock";
        Step(document, 1)["time"] = new JsonObject { ["value"] = 49, ["unit"] = "h" };
        Step(document, 1)["cautions"] = new JsonArray(new JsonObject { ["word"] = "mind", ["text"] = " " });
        Step(document, 1)["holdPoints"] = new JsonArray(
            new JsonObject { ["id"] = "h", ["text"] = "t", ["count"] = true, ["written"] = true }, new JsonObject { ["id"] = "h", ["text"] = "t", ["written"] = false });
        Assert.Equal(
            [
                "/steps/0", "/steps/1/cautions/0/source", "/steps/1/cautions/0/text", "/steps/1/cautions/0/word", "/steps/1/holdPoints/0", "/steps/1/holdPoints/1/written",
                "/steps/1/time/value", "/title",
            ],
            Faults(document).Select(fault => fault.Place).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void HoldPointTwice_IsRefused()
    {
        JsonObject document = Document(("a", []));
        Step(document, 0)["holdPoints"] = new JsonArray(new JsonObject { ["id"] = "h", ["text"] = "one" }, new JsonObject { ["id"] = "h", ["text"] = "two" });
        Assert.Equal("/steps/0/holdPoints/1/id", Assert.Single(Faults(document)).Place);
    }

    [Fact]
    public void StepsWithoutEnd_AreRefused()
    {
        string[] ids = [.. Enumerable.Range(0, Procedure.MostSteps + 1).Select(i => $"s{i}")];
        Assert.Equal("/steps", Assert.Single(Faults(Document([.. ids.Select(id => (id, Array.Empty<string>()))]))).Place);
        Assert.Empty(Faults(Document([.. ids.Skip(1).Select(id => (id, Array.Empty<string>()))])));
        Assert.Equal("/steps", Assert.Single(Faults(Document())).Place);
    }

    [Fact]
    public void Stream_IsRead_AsTheBytes()
    {
        byte[] utf8 = GoldenDocuments.Read("Documents/v1/procedure.json");
        using MemoryStream stream = new(utf8);
        ProcedurePage page = ProcedureJson.ReadFrom(stream).Value;
        Assert.Equal(ProcedureJson.ToText(ProcedureJson.Read(utf8).Value), ProcedureJson.ToText(page));
        Assert.Equal(["fuel-filter", "impeller-inspect"], page.Tasks.Select(task => task.TaskId));
        Assert.Equal(Enum.GetValues<StepAct>(), page.Procedure.Steps.SelectMany(step => step.Acts).Distinct().Order());
    }

    private static void AssertSame(ProcedurePage page)
    {
        string text = ProcedureJson.ToText(page);
        ReadResult<ProcedurePage> read = ProcedureJson.Read(Encoding.UTF8.GetBytes(text));
        Assert.True(read.IsRead, string.Join("; ", read.Faults.Select(fault => fault.ToString())));
        Assert.Equal(text, ProcedureJson.ToText(read.Value));
        Assert.Equal(PublicState.Of(page), PublicState.Of(read.Value));
    }

    private static ProcedureStep Enriched(ProcedureStep step, Random random)
    {
        step = random.Next(3) == 0 ? step.When((Circumstance)random.Next(1, 6), random.Next(2) == 0) : step;
        step = random.Next(3) == 0 ? step.With(Tool.Of($"tool {random.Next(3)}", random.Next(2) == 0 ? "10 mm" : null)) : step;
        step = random.Next(3) == 0 ? step.Using("rag", $"part \"{random.Next(9)}\" é") : step;
        step = random.Next(3) == 0 ? step.Taking(Duration.FromMinutes(0.02 + (random.NextDouble() * 2000))) : step;
        step = random.Next(3) == 0 ? step.With(HoldPoint.Lasting("lasting", "long enough", Duration.FromMinutes(0.02 + (random.NextDouble() * 1400))), HoldPoint.Counted("counted", "none missing"), HoldPoint.Written("written", "what was read")) : step;
        step = random.Next(4) == 0 ? step.ExpiringOvernight() : step;
        step = random.Next(4) == 0 ? step.Because("why").Deciding((Circumstance)random.Next(6)) : step;
        return random.Next(4) == 0 ? step.With(Caution.Of((SignalWord)random.Next(4), "mind", Citation.Derived("an account"))) : step;
    }

    private static JsonObject Document(params (string Id, string[] After)[] steps) => new()
    {
        ["format"] = "marine-service/procedure",
        ["version"] = 1,
        ["id"] = "test",
        ["title"] = "Test",
        ["steps"] = new JsonArray([.. steps.Select(step => new JsonObject
        {
            ["id"] = step.Id,
            ["text"] = $"Do {step.Id}",
            ["after"] = new JsonArray([.. step.After.Select(after => JsonValue.Create(after))]),
        })]),
    };

    private static JsonObject Step(JsonObject document, int index) => document["steps"]![index]!.AsObject();

    private static IReadOnlyList<ReadFault> Faults(JsonObject document) => ProcedureJson.Read(Encoding.UTF8.GetBytes(document.ToJsonString())).Faults;
}
