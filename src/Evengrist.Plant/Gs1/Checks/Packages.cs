using System.Collections.Frozen;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Kinds of package: UN/ECE Recommendation 21 with what GS1 adds, as GS1's reference test held them in July 2026.</summary>
internal static class Packages
{
    // First character and a colon, then what may follow it.
    private static readonly FrozenSet<string> Codes = NumberList.Words(
        """
        1:A,B,D,F,G,W 2:00,01,02,03,04,05,06,10,11,12,C 3:A,H 4:3,4,A,B,C,D,F,G,H 5:H,L,M 6:H,P 7:A,B 8:,A,B,C 9:
        A:A,B,C,D,F,G,H,I,J,L,M,P,PE,T,V B:4,B,C,D,E,F,G,GE,H,I,J,K,L,M,ME,N,O,P,Q,R,RI,S,T,U,V,W,X,Y,Z
        C:A,B,BL,C,CE,D,E,F,G,H,I,J,K,L,M,N,O,P,Q,R,S,T,U,V,W,X,Y,Z D:A,B,C,G,H,I,J,K,L,M,N,P,PE,R,S,T,U,V,W,X,Y E:1,2,3,C,D,E,F,G,H,I,N
        F:B,C,D,E,I,L,O,OB,P,PE,R,T,W,X G:B,I,L,R,U,Y,Z H:A,B,C,G,N,R I:A,B,C,D,E,F,G,H,K,L,N,Z J:B,C,G,R,T,Y K:G,I L:AB,E,G,T,U,V,Z
        M:A,B,C,E,PE,R,S,T,W,X N:A,E,F,G,S,T,U,V O:A,B,C,D,E,F,K,PE,T,U P:2,A,AE,B,C,D,E,F,G,H,I,J,K,L,LP,N,O,OP,P,PE,R,T,U,UE,V,X,Y,Z
        Q:A,B,C,D,F,G,H,J,K,L,M,N,P,Q,R,S R:B1,B2,B3,CB,D,G,J,K,L,O,T,Z S:1,A,B,C,D,E,EC,H,I,K,L,M,O,P,S,T,TL,U,V,W,X,Y,Z
        T:1,B,C,D,E,EV,G,HE,I,K,L,N,O,R,RE,S,T,TE,U,V,W,WE,Y,Z U:C,N,UE V:A,G,I,K,L,N,O,P,Q,R,S,Y W:A,B,C,D,F,G,H,J,K,L,M,N,P,Q,R,RP,S,T,U,V,W,X,Y,Z
        X:11,12,15,16,17,18,19,20,3,A,B,C,D,F,G,H,J,K Y:A,B,C,D,F,G,H,J,K,L,M,N,P,Q,R,S,T,V,W,X,Y,Z Z:A,B,C,D,F,G,H,J,K,L,M,N,P,Q,R,S,T,U,V,W,X,Y,Z
        """).SelectMany(w => w[2..].Split(',').Select(rest => w[0] + rest)).ToFrozenSet(StringComparer.Ordinal);

    public static bool IsCode(string part) => Codes.Contains(part);
}
