// Plans with a direct-current side for the tests of its sheet, each a scenario of its own.

/** A cabin on a trailer: one battery, an inverter-charger, a fuse block, a load centre. */
export const cabin = `plan "Pine marten, a cabin on a trailer"
  region us
place bench "Under-bench bay"
inlet shore 30 A 120 V
battery house lithium 12.8 V 280 Ah, fault 5 kA in bench
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting in bench
panel LC "Load centre" main 30 A
  slot 1: breaker 20 A
feed supply from shore by 10-2
  12 ft to inv.in
feed output from inv.out by 10-2
  6 ft to LC
circuit bunks from LC.1 by 12-2
  14 ft to b1: receptacle
feed bank-plus from house.+ by single 4/0 red
  6 in to F1: fuse class-T 300 A
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 600 A
feed bank-minus from house.- by single 4/0 black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 600 A
feed inv-plus from plus by single 2/0 red
  6 in to F2: fuse class-T 250 A
  3 ft to inv.+
feed inv-minus from minus by single 2/0 black
  3 ft to inv.-
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 10 A
  slot 3: fuse 15 A
  slot 4: fuse 10 A
feed small from plus, minus by pair 8 AWG
  bolted to F3: fuse 60 A interrupting 10 kA
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
  4 ft to l2: light 6 W
circuit water from FB.2 by pair 14 AWG
  9 ft to wp: pump 60 W
circuit roof from FB.3 by pair 14 AWG
  9 ft to rf: fan 30 W
circuit book from FB.4 by pair 16 AWG
  6 ft to rs: switch
  5 ft to rl: light 4 W
chassis frame
bond case from inv.case by single 4 AWG green
  3 ft to frame
bond minus-frame from minus by single 2/0 black
  2 ft to frame
bond board from LC.ground by single 8 AWG green
  6 ft to frame
`;

/** A van with two batteries in parallel, each behind its own fuse. */
export const twoBatteries = `plan "Kestrel, a delivery van made into a home"
  region us
battery north lithium 12.8 V 200 Ah, fault 5 kA
battery south lithium 12.8 V 200 Ah, fault 5 kA
feed north-plus from north.+ by single 2/0 red
  6 in to FN: fuse class-T 200 A
  1 ft to plus: bus 600 A studs 8
feed south-plus from south.+ by single 2/0 red
  6 in to FS: fuse class-T 200 A
  1 ft to plus
feed north-minus from north.- by single 2/0 black
  2 ft to SH: shunt 500 A
feed south-minus from south.- by single 2/0 black
  1 ft to north.-
feed common from SH.load by single 4/0 black
  1 ft to minus: bus 600 A studs 8
fuse-block FB "House circuits"
  slot 1: fuse 10 A
  slot 2: fuse 10 A
  slot 3: fuse 5 A
feed small from plus, minus by pair 6 AWG
  bolted to F3: fuse 80 A interrupting 10 kA
  3 ft to FB
circuit ceiling from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W "Front, left"
  4 ft to l2: light 6 W
  4 ft to l3: light 6 W
circuit cold from FB.2 by pair 12 AWG
  6 ft to fr: fridge 60 W "Fridge, under the counter"
`;

/** The smallest: a battery, a fuse, a fuse block, two lights; all by pairs. */
export const micro = `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 5 A
feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
  4 ft to l2: light 6 W
`;

/** A pump on a switch, no fuse block, the negative through the chassis. */
export const chassisReturn = `battery house agm 12 V 90 Ah
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  2 ft to main: disconnect 100 A
  2 ft to pump.+
feed minus from house.- by single 6 AWG black
  2 ft to frame
feed back from pump.- by single 10 AWG black
  1 ft to frame
pump pump 60 W
chassis frame
`;

/** Metric pairs at 24 V. */
export const metric = `plan "Redstart, a coach at 24 V"
  region iec
battery bank lithium 25.6 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 10 A
feed small from bank.+, bank.- by pair 10 mm2
  within 15 cm to F1: fuse 40 A
  1 m to FB
circuit lights from FB.1 by pair 1.5 mm2
  4 m to l1: light 6 W
circuit air from FB.2 by pair 2.5 mm2
  3 m to v1: fan 30 W
`;

/** Two batteries, and a fuse block with eight ways in use. */
export const eightWays = `plan "Merlin, a long van"
  region us
battery north lithium 12.8 V 200 Ah, fault 5 kA
battery south lithium 12.8 V 200 Ah, fault 5 kA
feed north-plus from north.+ by single 2/0 red
  6 in to FN: fuse class-T 200 A
  1 ft to plus: bus 600 A studs 8
feed south-plus from south.+ by single 2/0 red
  6 in to FS: fuse class-T 200 A
  1 ft to plus
feed north-minus from north.- by single 2/0 black
  2 ft to SH: shunt 500 A
feed south-minus from south.- by single 2/0 black
  1 ft to north.-
feed common from SH.load by single 4/0 black
  1 ft to minus: bus 600 A studs 8
fuse-block FB "House circuits"
  slot 1: fuse 10 A
  slot 2: fuse 10 A
  slot 3: fuse 5 A
  slot 4: fuse 10 A
  slot 5: fuse 10 A
  slot 6: fuse 10 A
  slot 7: fuse 10 A
  slot 8: fuse 10 A
feed small from plus, minus by pair 6 AWG
  bolted to F3: fuse 80 A interrupting 10 kA
  3 ft to FB
circuit ceiling from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W "Front, left"
  4 ft to l2: light 6 W
  4 ft to l3: light 6 W
circuit cold from FB.2 by pair 12 AWG
  6 ft to fr: fridge 60 W "Fridge, under the counter"
circuit c3 from FB.3 by pair 16 AWG
  6 ft to m3: light 6 W
  6 ft to m4: light 6 W
circuit c4 from FB.4 by pair 12 AWG
  6 ft to p4: pump 60 W
circuit c5 from FB.5 by pair 14 AWG
  6 ft to f5: fan 30 W
circuit c6 from FB.6 by pair 16 AWG
  6 ft to s6: switch
  4 ft to n6: light 6 W
circuit c7 from FB.7 by pair 16 AWG
  6 ft to n7: light 6 W
circuit c8 from FB.8 by pair 16 AWG
  6 ft to n8: light 6 W
  6 ft to n9: light 6 W
`;

/** The same beside a starter battery that nothing of the house is joined to. */
export const starterApart = `${eightWays}battery start agm 12 V 60 Ah
load horn 60 W
feed horn from start.+, start.- by pair 14 AWG
  within 6 in to F9: fuse 15 A
  9 ft to horn
`;

/** A barge: a pump straight from the battery with its negative from the bus, a solar string behind two buses, all conductors spliced. */
export const barge = `plan "Coot, a barge"
  region us
  splices always
battery house lithium 12.8 V 200 Ah, fault 5 kA
feed bank-plus from house.+ by single 4/0 red
  6 in to F1: fuse class-T 300 A
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 600 A
feed bank-minus from house.- by single 4/0 black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 600 A
feed bilge from house.+, minus by pair 12 AWG
  6 in to F2: fuse class-T 15 A
  2 ft to fs: float-switch 20 A
  6 ft to bp: pump 60 W
solar m1 100 W, open 22 V, short 6 A
solar m2 100 W, open 22 V, short 6 A
solar-controller sun 30 A 12 V, limit 50 V
feed one from m1.+ by single 10 AWG red
  6 ft to roof-plus: bus 100 A
feed one-back from m1.- by single 10 AWG black
  6 ft to roof-minus: bus 100 A
feed two from m2.+ by single 10 AWG red
  6 ft to roof-plus
feed two-back from m2.- by single 10 AWG black
  6 ft to roof-minus
feed down from roof-plus, roof-minus by pair 10 AWG
  9 ft to D2: disconnect 60 A
  2 ft to sun.in
feed charge from plus, minus by pair 10 AWG
  bolted to F3: fuse 30 A
  3 ft to sun.out
fuse-block FB 100 A
  slot 1: fuse 5 A
  slot 2: fuse 10 A
feed small from plus, minus by pair 6 AWG
  bolted to F4: fuse 60 A
  3 ft to FB
circuit lamps from FB.2 by pair 14 AWG
  9 ft to l1: light 6 W
feed winch from plus, minus by pair 1/0
  bolted to F5: fuse 100 A
  3 ft to K1: contactor 150 A coil 12 V
  4 ft to w1: load "Winch" 600 W
circuit call from FB.1 by pair 16 AWG
  6 ft to s1: switch
  3 ft to K1.coil
`;
