namespace Evengrist.Ledger.Reckoned;

/// <summary>First in first out, then a stirred stage of a given mass at the outlet: a tempering bin, a packing line.</summary>
/// <remarks>
/// What is drawn from a full stage is replaced from the plug above it at the same moment. While d grams of one parcel flow
/// through a stage of M grams its composition goes from c to c·e^(−d/M) + in·(1 − e^(−d/M)), and the mean of what leaves is
/// in + (c − in)·(1 − e^(−d/M))/(d/M): the well-stirred tank, exact for steady flow. With no stage it is first in first out.
/// </remarks>
internal sealed class ThroughContent : Content
{
    private readonly int place;
    private readonly double stage;
    private readonly IParcelMaker maker;
    private readonly PlugContent plug;
    private readonly List<Layer> parts = [];
    private readonly List<Layer> fed = [];
    private int state;
    private double stirred;

    public ThroughContent(int place, double stage, IParcelMaker maker)
        : this(place, stage, maker, new PlugContent(), -1, 0)
    {
    }

    private ThroughContent(int place, double stage, IParcelMaker maker, PlugContent plug, int state, double stirred)
    {
        this.place = place;
        this.stage = stage;
        this.maker = maker;
        this.plug = plug;
        this.state = state;
        this.stirred = stirred;
    }

    public override double Grams => plug.Grams + stirred;

    public override void Fill(int parcel, double grams)
    {
        var room = Math.Min(stage - stirred, grams);
        if (room > Nothing && plug.Grams <= 0)
        {
            Blend(parcel, room);
            grams -= room;
        }

        if (grams > Nothing)
        {
            plug.Fill(parcel, grams);
        }
    }

    public override void Draw(double wanted, List<Layer> taken)
    {
        if (stage <= 0)
        {
            plug.Draw(wanted, taken);
            return;
        }

        var through = Math.Min(wanted, plug.Grams);
        if (through > Nothing)
        {
            fed.Clear();
            plug.Draw(through, fed);
            foreach (var layer in fed)
            {
                Exchange(layer, taken);
            }

            wanted -= through;
        }

        if (wanted > Nothing && stirred > 0)
        {
            var drawn = Math.Min(wanted, stirred);
            taken.Add(new Layer(state, drawn));
            stirred = stirred - drawn <= Nothing ? 0 : stirred - drawn;
        }
    }

    public override void List(List<Layer> into)
    {
        if (stirred > 0)
        {
            into.Add(new Layer(state, stirred));
        }

        plug.List(into);
    }

    public override Content Copy(IParcelMaker other) => new ThroughContent(place, stage, other, (PlugContent)plug.Copy(other), state, stirred);

    public override void Renumber(Func<int, int> number)
    {
        plug.Renumber(number);
        state = state < 0 ? state : number(state);
    }

    private void Exchange(Layer fresh, List<Layer> taken)
    {
        if (state == fresh.Parcel)
        {
            taken.Add(fresh);
            return;
        }

        var x = fresh.Grams / stirred;
        var kept = Math.Exp(-x);
        var old = stirred * (1 - kept);
        taken.Add(new Layer(state, old));
        taken.Add(new Layer(fresh.Parcel, fresh.Grams - old));
        parts.Clear();
        parts.Add(new Layer(state, stirred * kept));
        parts.Add(new Layer(fresh.Parcel, old));
        state = maker.Mix(place, parts, stirred);
    }

    private void Blend(int parcel, double grams)
    {
        if (stirred <= 0 || state == parcel)
        {
            state = parcel;
        }
        else
        {
            parts.Clear();
            parts.Add(new Layer(state, stirred));
            parts.Add(new Layer(parcel, grams));
            state = maker.Mix(place, parts, stirred + grams);
        }

        stirred += grams;
    }
}
