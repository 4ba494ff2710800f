// How many plans begin: a small mains side, and a battery with its buses and a fuse block.

/** A shore inlet and a panel. */
export const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

/** A battery, its first fuse, its buses and a fuse block with two slots. */
export const bank = `battery house lithium 12.8 V 280 Ah, fault 5 kA
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 15 A
feed main from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A interrupting 20 kA
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 250 A
feed back from house.- by single 2 AWG black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 60 A
  3 ft to FB
`;
