using MarineService.Core.Engines;

namespace MarineService.Core.LayUp;

/// <summary>Puts a plan together: steps in order, findings, tags, and what is missing.</summary>
internal sealed class LayUpPlanner
{
    private readonly LayUpData _data;
    private readonly List<LayUpStep> _steps = [];
    private readonly List<Finding> _findings = [];
    private readonly List<string> _missing = [];
    private readonly List<string> _tags = [];

    internal LayUpPlanner(LayUpData data)
    {
        _data = data;
        Fill = data.Antifreeze is not null && data.Side is not null ? AntifreezeFill.Of(data.Antifreeze, data.Side, data.Freeze, data.Limits) : null;
        Fogging = FoggingDose.For(data.Engine, data.Cylinders, data.Limits);
        Battery = data.Battery is null ? null : BatteryCheck.Of(data.Battery, data.Freeze, data.Limits);
        _findings.AddRange(data.Freeze.Findings);
        _missing.AddRange(data.Freeze.Missing);
        FuelAndLastRun();
        Oil();
        Coolant();
        Drain();
        BackFill();
        Prove();
        Fog();
        Impeller();
        Charge();
        Close();
        (Steps, Findings, Tags) = (_steps.AsReadOnly(), _findings.AsReadOnly(), _tags.AsReadOnly());
        Missing = Array.AsReadOnly<string>([.. _missing.Distinct()]);
    }

    internal IReadOnlyList<LayUpStep> Steps { get; }

    internal IReadOnlyList<Finding> Findings { get; }

    internal IReadOnlyList<string> Missing { get; }

    internal IReadOnlyList<string> Tags { get; }

    internal AntifreezeFill? Fill { get; }

    internal FoggingDose Fogging { get; }

    internal BatteryCheck? Battery { get; }

    private bool IsPetrol => _data.Engine.Fuel != Fuel.Diesel;

    private string Subject => $"engine '{_data.Engine.Designation}'";

    private void Step(LayUpTopic topic, string template, Citation citation, Caution? caution = null, params Figure[] figures) =>
        _steps.Add(new LayUpStep(topic, template, citation, caution, figures));

    private void FuelAndLastRun()
    {
        if (_data.Fuel is FuelLayUp fuel)
        {
            int? days = _data.Freeze.From is { } from && _data.Freeze.To is { } to ? NodaTime.Period.DaysBetween(from, to) : null;
            _findings.AddRange(fuel.Findings(days is int known ? Math.Min(known, 3660) : null));
            Figure level = Figure.Of("level", fuel.FillFraction, FigureUnit.Fraction);
            Figure treated = Figure.Of("treated", fuel.AfterLiters, FigureUnit.Liter);
            if (fuel.DoseMilliliters is double dose)
            {
                Step(LayUpTopic.Fuel, "Put {dose} of '{stabilizer}' in the tank for {treated} of fuel, before filling.", Citation.GivenByCaller, null,
                    Figure.Of("dose", dose, FigureUnit.Milliliter), Figure.Of("stabilizer", fuel.Stabilizer!.Name), treated);
            }

            if (fuel.InsideLiters is null)
            {
                _missing.AddRange(fuel.Add.Missing);
                Step(LayUpTopic.Fuel, "Fill the tank to {level}, {treated} in all.", LayUpSources.FuelTankLevel, null, level, treated);
            }
            else if (fuel.AddLiters > 0)
            {
                Step(LayUpTopic.Fuel, "Add {add} of fuel, to {level} of the tank.", LayUpSources.FuelTankLevel, null, Figure.Of("add", fuel.AddLiters, FigureUnit.Liter), level);
            }
        }
        else
        {
            _missing.Add("The fuel tank and what is in it.");
        }

        Step(LayUpTopic.Fuel, "Run the engine for ten minutes on a water supply, so that it is warm and treated fuel reaches all of it. In salt or brackish water flush with fresh.",
            LayUpSources.VesselPreservation, _data.Engine.Fuel == Fuel.Diesel ? LayUpCautions.Run : LayUpCautions.PetrolRun);
    }

    private void Oil() => Step(
        LayUpTopic.Oil, "Change engine oil and filter while it is warm, so that acid and water do not winter in the engine; tag the date.", LayUpSources.VesselPreservation, LayUpCautions.HotOil);

    private void Coolant()
    {
        CoolingKind cooling = _data.Engine.Cooling;
        if (cooling == CoolingKind.NotStated)
        {
            _findings.Add(LayUpRules.CoolingNotStated.On(Subject));
            _missing.Add("Whether raw water or coolant runs through the block.");
        }

        if (cooling == CoolingKind.RawWater)
        {
            return;
        }

        Step(LayUpTopic.Coolant, "Read the coolant of the closed circuit with a refractometer for its own glycol.", Citation.CommonPractice);
        if (_data.Coolant is not RefractometerReading reading)
        {
            _findings.Add(LayUpRules.CoolantNotRead.On(Subject));
        }
        else if (_data.Freeze.LowCelsius is double low && Math.Round(reading.Celsius, 6) > Math.Round(low - _data.Limits.FreezingMarginKelvins, 6))
        {
            _findings.Add(LayUpRules.CoolantTooWeak.On(
                "coolant",
                Figure.Of("read", reading.Celsius, FigureUnit.DegreeCelsius),
                Figure.Of("wanted", low - _data.Limits.FreezingMarginKelvins, FigureUnit.DegreeCelsius),
                Figure.Of("lowest", low, FigureUnit.DegreeCelsius)));
        }
    }

    private void Drain()
    {
        bool? seacock = _data.Boat?.HasSeacock;
        Caution caution = seacock == false ? LayUpCautions.NoSeacock : LayUpCautions.SeaWaterIn;
        if (seacock is null)
        {
            _missing.Add("Whether the raw-water inlet has a seacock.");
        }
        else if (seacock == true)
        {
            _tags.Add("seacock shut");
            Step(LayUpTopic.Drain, "Shut the seacock and tag the key. Ashore, work it once while it drains: its ball holds water.", Citation.CommonPractice);
        }

        if (_data.Side is null)
        {
            _missing.Add("The low points of the raw-water side.");
            Step(LayUpTopic.Drain, "Find and open every low point: block, manifolds, heat exchanger, coolers, pump, strainer, muffler. Rod each drain and see it run dry.", Citation.CommonPractice, caution);
            return;
        }

        foreach (LowPointKind kind in _data.Side.NotAccountedFor(_data.Engine, _data.Boat))
        {
            _findings.Add(LayUpRules.NotAccountedFor.On(LowPoint.Words(kind)));
        }

        foreach (LowPoint point in _data.Side.LowPoints)
        {
            Figure title = Figure.Of("point", point.Title);
            if (point.Drains == 0)
            {
                _findings.Add(LayUpRules.NoDrain.On($"low point '{point.Title}'"));
                _missing.AddRange(point.Trapped.Missing);
                Step(LayUpTopic.Drain, "{point}: no drain. Take a hose off, blow or suck it out.", Citation.CommonPractice, caution, title);
            }
            else
            {
                Step(LayUpTopic.Drain, point.Drains == 1 ? "{point}: open the drain, rod it, see it run dry." : "{point}: open its {drains} drains, rod each, see each run dry.", Citation.CommonPractice, caution,
                    title, Figure.Of("drains", point.Drains, FigureUnit.Number));
            }

            caution = null!;
        }
    }

    private void BackFill()
    {
        if (_data.Freeze.Verdict == FreezeVerdict.NoFrostExpected)
        {
            return;
        }

        if (Fill is null)
        {
            if (_data.Antifreeze is not null)
            {
                _missing.Add("The low points of the raw-water side.");
            }

            return;
        }

        _findings.AddRange(Fill.Findings);
        _missing.AddRange(Fill.Fill.Missing);
        _missing.AddRange(Fill.PumpThrough.Missing);
        if (_data.Antifreeze!.HasEthanol || !Fill.Fill.IsKnown)
        {
            return;
        }

        AntifreezeRecipe recipe = Fill.Fill.Value;
        Figure[] figures =
        [
            Figure.Of("product", recipe.ProductLiters, FigureUnit.Liter), Figure.Of("water", recipe.WaterLiters, FigureUnit.Liter),
            Figure.Of("mix", recipe.ProductLiters + recipe.WaterLiters, FigureUnit.Liter), Figure.Of("antifreeze", _data.Antifreeze.Name),
            Figure.Of("strength", Fill.Strength.Value.VolumeFraction, FigureUnit.Fraction),
        ];
        if (recipe.WaterLiters > 0)
        {
            Step(LayUpTopic.Antifreeze, "Mix {product} of '{antifreeze}' with {water} of clean fresh water: {mix} of {strength} glycol.", Citation.Derived("the balance of glycol in a well-mixed vessel"), null, figures);
        }

        Step(
            LayUpTopic.Antifreeze,
            _data.Engine.Cooling == CoolingKind.FreshWater
                ? "Shut the drains. Back-fill exchanger, coolers, pump and exhaust by their own hoses until it runs out full, about {mix} of {strength} glycol."
                : "Shut the drains. Back-fill block, manifolds and coolers by their own hoses until it runs out full, about {mix} of {strength} glycol; a shut thermostat keeps it out of the block otherwise.",
            Citation.CommonPractice,
            LayUpCautions.Antifreeze,
            figures);
        if (Fill.ThroughLiters is double through && through > recipe.ProductLiters + recipe.WaterLiters + 0.005)
        {
            Step(LayUpTopic.Antifreeze, "Trapped water thins it: have {through} of the mix at hand and run it through until every drain reads strong enough.",
                Citation.Derived("the balance of glycol in a well-mixed vessel"), null, Figure.Of("through", through, FigureUnit.Liter));
        }
    }

    private void Prove()
    {
        if (_data.Freeze.Verdict == FreezeVerdict.NoFrostExpected)
        {
            return;
        }

        if (_data.Antifreeze is { HasEthanol: false, Kind: not null } && _data.Freeze.LowCelsius is double low)
        {
            Step(
                LayUpTopic.Proof,
                _data.Engine.Cooling == CoolingKind.FreshWater
                    ? "Read a sample from every low point's drain, and not only from the exhaust: {wanted} or below by the {scale} glycol scale."
                    : "Read a sample from every low point's drain, block and manifolds first, and not only from the exhaust: {wanted} or below by the {scale} glycol scale.",
                Citation.CommonPractice,
                null,
                Figure.Of("wanted", low - _data.Limits.FreezingMarginKelvins, FigureUnit.DegreeCelsius),
                Figure.Of("scale", _data.Antifreeze.Base == AntifreezeBase.EthyleneGlycol ? "ethylene" : "propylene"));
        }
        else
        {
            Step(LayUpTopic.Proof, "Count the drains: every one rodded, every one seen running, every one dry. Leave them open, plugs in a labelled bag.", LayUpSources.VesselPreservation);
        }
    }

    private void Fog()
    {
        _findings.AddRange(Fogging.Findings);
        _missing.AddRange(Fogging.Verdict == FoggingVerdict.NotKnown ? Fogging.Each.Missing : []);
        if (Fogging.Verdict != FoggingVerdict.Dose)
        {
            return;
        }

        Step(LayUpTopic.Fogging, "Fog: {each} of preserving oil in each of {cylinders} cylinders, {total} in all. Let it stand 12 h, then turn the engine by hand to prove that it is not locked.",
            LayUpSources.VesselPreservation, LayUpCautions.Fogging,
            Figure.Of("each", Fogging.EachMilliliters!.Value, FigureUnit.Milliliter),
            Figure.Of("cylinders", _data.Cylinders!.Count, FigureUnit.Number),
            Figure.Of("total", Fogging.EachMilliliters.Value * _data.Cylinders.Count, FigureUnit.Milliliter));
        _tags.Add("do not crank: fogged");
    }

    private void Impeller()
    {
        Step(LayUpTopic.Impeller, "Take the impeller out, or relax its vanes; tag the key.", Citation.CommonPractice);
        _tags.Add("impeller out");
    }

    private void Charge()
    {
        if (Battery is null)
        {
            _missing.Add("The battery's voltage after a rest, or the density of its acid.");
        }
        else
        {
            _findings.AddRange(Battery.Findings);
        }

        Step(LayUpTopic.Battery, "Charge the battery fully, switch it off, and read it each month; charge again under {limit} for 12 V of lead.",
            Citation.CommonPractice, LayUpCautions.Battery, Figure.Of("limit", _data.Limits.RechargeBelowVolts, FigureUnit.Volt));
    }

    private void Close()
    {
        Step(LayUpTopic.Closing, IsPetrol ? "Clean and dry the bilge, absorbent in; cover air intake and exhaust, and list each cover. Leave the engine space able to breathe."
            : "Clean and dry the bilge, absorbent in; cover air intake and exhaust, and list each cover. Drain water from the fuel filter.", Citation.CommonPractice);
        _tags.Add("air intake covered");
        _tags.Add("exhaust covered");
        Step(LayUpTopic.Closing, "From now on any start, and any water that gets in, undoes the protection: drain and prove it again.", LayUpSources.FreezeClaims);
    }
}
