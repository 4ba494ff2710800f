// The limits that rules hold, each with the last figure that is right and the first that is not, put into one plan at `{}`.
import { supply } from "./beginnings.ts";
import { varied, variedSecond } from "./variation.ts";

/** One limit of one rule. */
export interface Limit {
	readonly code: string;
	/** What is limited, and where. */
	readonly what: string;
	readonly plan: string;
	readonly fits: string;
	readonly exceeds: string;
}

const iec = `plan "x"\n  region iec\ninlet shore 16 A 230 V\npanel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3 m\n`;
const legs = "inlet pole 50 A 120/240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 12 ft\n";
const heater = (watts: string, breaker = "15 A", cable = "14-2") =>
	`${supply}circuit one from LC breaker ${breaker} by ${cable}\n  9 ft to h1: heater ${watts}\n`;
const lamp = (breaker: string, cable: string) =>
	`${supply}circuit one from LC breaker ${breaker} by ${cable}\n  9 ft to l1: light 9 W\n`;
const lead = (volts: string, fuse: string) =>
	`battery house lithium ${volts} 100 Ah, fault 1 kA\nfeed small from house.+, house.- by pair 12 AWG\n  within 7 in to F1: fuse ${fuse}\n  3 ft to l1: light 6 W ${volts}\n`;
const pairOf = (first: string, second: string, way: string) => `battery A1 agm 12 V ${first}
battery A2 agm 12 V ${second}
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  24 in to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  ${way} to plus
feed b1 from A1.- by single 2 AWG black
  24 in to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  24 in to minus
feed small from plus, minus by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l1: light 6 W
`;

const protection: readonly Limit[] = [
	{ code: "protection-too-large", what: "14 AWG", plan: lamp("{}", "14-2"), fits: "15 A", exceeds: "20 A" },
	{ code: "protection-too-large", what: "12 AWG", plan: lamp("{}", "12-2"), fits: "20 A", exceeds: "25 A" },
	{
		code: "protection-too-large",
		what: "10 AWG",
		plan: lamp("{}", "10-2").replaceAll("30 A", "50 A").replace("by 10-2", "by 6-2"),
		fits: "30 A",
		exceeds: "35 A",
	},
	{
		code: "protection-too-large",
		what: "16 AWG on a battery",
		plan: lead("12.8 V", "{}").replace("12 AWG", "16 AWG"),
		fits: "25 A",
		exceeds: "30 A",
	},
	{
		code: "main-too-large",
		what: "a main behind a 20 A feeder",
		plan: `${supply}feed second from LC breaker 20 A by 12-2\n  12 ft to P2: panel main {}\ncircuit one from P2 breaker 15 A by 14-2\n  9 ft to b1: receptacle\n`,
		fits: "20 A",
		exceeds: "25 A",
	},
	{
		code: "protection-out-of-order",
		what: "a 20 A main behind a breaker",
		plan: `${supply}feed second from LC breaker {} by 12-2\n  12 ft to P2: panel main 20 A\ncircuit one from P2 breaker 15 A by 14-2\n  9 ft to b1: receptacle\n`,
		fits: "20 A",
		exceeds: "15 A",
	},
	{
		code: "protection-too-far",
		what: "a fuse from the battery's post, in a camper",
		plan: varied("protection-too-far", ["5 ft to F1", "{} to F1"]),
		fits: "18 in",
		exceeds: "19 in",
	},
	{
		code: "protection-too-far",
		what: "a fuse from the battery's post, on a boat",
		plan: variedSecond("protection-too-far", ["8 ft to F1", "{} to F1"]),
		fits: "7 in",
		exceeds: "73 in",
	},
	{
		code: "interrupting-rating-low",
		what: "what a battery pushes into a short circuit",
		plan: varied("interrupting-rating-low", ["interrupting 5 kA", "interrupting {}"]),
		fits: "12 kA",
		exceeds: "11.9 kA",
	},
	{
		code: "voltage-rating-low",
		what: "44 V on a fuse marked for its nominal voltage",
		plan: lead("44 V", "15 A {}"),
		fits: "40 V",
		exceeds: "39 V",
	},
	{
		code: "string-voltage-high",
		what: "a string of 55 V on the coldest day",
		plan: varied("string-voltage-high", ["limit 50 V", "limit {}"]),
		fits: "55 V",
		exceeds: "54.9 V",
	},
	{
		code: "strings-unfused",
		what: "a string's fuse, by what the plate allows",
		plan: variedSecond("strings-unfused", ["fuse 10 A,", "fuse {},"]),
		fits: "15 A",
		exceeds: "14 A",
	},
	{
		code: "ground-undersized",
		what: "a ground beside 20 A",
		plan: `${supply}circuit pump from LC breaker 20 A by single 12 AWG black\n  8 ft to p1: pump 60 W\nfeed back from LC.neutral by single 12 AWG white\n  8 ft to p1\nbond shell from LC.ground by single {} green\n  8 ft to p1\n`,
		fits: "12 AWG",
		exceeds: "14 AWG",
	},
	{
		code: "chassis-bond-small",
		what: "a bond beside a positive of 2 AWG",
		plan: varied("chassis-bond-small", ["10 AWG", "{}"]),
		fits: "4 AWG",
		exceeds: "6 AWG",
	},
	{
		code: "ground-fault-missing",
		what: "the way to a basin",
		plan: `place galley basin {}\n${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle in galley\n`,
		fits: "6.1 ft",
		exceeds: "6 ft",
	},
	{
		code: "ground-fault-missing",
		what: "the leakage that trips",
		plan: `place porch outdoor\n${supply}circuit one from LC ground-fault-breaker 20 A trip {} by 12-2\n  9 ft to b1: receptacle in porch\n`,
		fits: "6 mA",
		exceeds: "6.1 mA",
	},
];

const loads: readonly Limit[] = [
	{ code: "circuit-overloaded", what: "a load on 15 A", plan: heater("{}"), fits: "1800 W", exceeds: "1801 W" },
	{
		code: "circuit-overloaded",
		what: "a continuous load on 15 A",
		plan: heater("{} continuous"),
		fits: "1440 W",
		exceeds: "1441 W",
	},
	{
		code: "circuit-overloaded",
		what: "a continuous load beside another",
		plan: `${heater("600 W")}  6 ft to h2: heater {} continuous\n`,
		fits: "960 W",
		exceeds: "961 W",
	},
	{
		code: "circuit-overloaded",
		what: "a load behind a fuse",
		plan: lead("12.5 V", "20 A").replace("6 W", "{}"),
		fits: "250 W",
		exceeds: "251 W",
	},
	{
		code: "circuit-overloaded",
		what: "what a charger of 20 A gives through its fuse",
		plan: `${supply}battery house lithium 12.8 V 100 Ah\ncircuit charge from LC breaker 15 A by 14-2\n  3 ft to ch: charger 20 A 12 V\nfeed filled from house.+, house.- by pair 8 AWG\n  within 7 in to F2: fuse {}\n  3 ft to ch.+\n`,
		fits: "20 A",
		exceeds: "15 A",
	},
	{
		code: "device-undersized",
		what: "a load behind a switch",
		plan: `${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to s1: switch 15 A\n  9 ft to h1: heater {}\n`,
		fits: "1800 W",
		exceeds: "1801 W",
	},
	{
		code: "device-undersized",
		what: "a disconnect behind a breaker",
		plan: `${supply}circuit one from LC breaker {} by 12-2\n  9 ft to hd: disconnect 15 A\n  9 ft to h1: heater 900 W\n`,
		fits: "15 A",
		exceeds: "20 A",
	},
	{
		code: "device-undersized",
		what: "a load behind a switch on a battery",
		plan: `battery house lithium 12.5 V 100 Ah\nfeed small from house.+, house.- by pair 12 AWG\n  within 6 in to F1: fuse 15 A\n  3 ft to s1: switch 10 A\n  3 ft to l1: light {} 12.5 V\n`,
		fits: "125 W",
		exceeds: "126 W",
	},
	{
		code: "receptacle-rating-wrong",
		what: "a receptacle on 20 A",
		plan: `${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle {}\n`,
		fits: "20 A",
		exceeds: "30 A",
	},
	{
		code: "receptacle-rating-wrong",
		what: "a receptacle alone on 20 A",
		plan: `${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle {} single\n`,
		fits: "20 A",
		exceeds: "15 A",
	},
	{
		code: "load-voltage-wrong",
		what: "how far 110 V may be from what a load is made for",
		plan: "inlet shore 30 A 110 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit one from LC breaker 15 A by 14-2\n  9 ft to l1: light 9 W {}\n",
		fits: "100 V",
		exceeds: "99 V",
	},
	{
		code: "load-voltage-wrong",
		what: "how low 120 V may be for what a load is made for",
		plan: `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to l1: light 9 W {}\n`,
		fits: "133 V",
		exceeds: "134 V",
	},
	{
		code: "drop-excessive",
		what: "the way to a heater",
		plan: `${supply}circuit one from LC breaker 15 A by 14-2\n  {} to h1: heater 1400 W\n`,
		fits: "48 ft",
		exceeds: "50 ft",
	},
	{
		code: "voltages-mixed",
		what: "two batteries of one nominal voltage on a bus",
		plan: "battery house agm 12 V 100 Ah\nbattery engine agm {} 100 Ah\nfeed house-plus from house.+ by single 6 AWG red\n  within 7 in to F1: fuse class-T 60 A\n  1 ft to plus: bus 250 A\nfeed engine-plus from engine.+ by single 6 AWG red\n  within 7 in to F2: fuse class-T 60 A\n  1 ft to plus\nfeed house-minus from house.- by single 6 AWG black\n  1 ft to minus: bus 250 A\nfeed engine-minus from engine.- by single 6 AWG black\n  1 ft to minus\n",
		fits: "12.8 V",
		exceeds: "24 V",
	},
];

const workmanship: readonly Limit[] = [
	{
		code: "conductor-undersized",
		what: "fixed wiring",
		plan: lamp("10 A", "{}"),
		fits: "14-2",
		exceeds: "16-2",
	},
	{
		code: "conductor-undersized",
		what: "fixed wiring in metric sizes",
		plan: `${iec}circuit one from DB breaker 6 A two-pole by {}\n  3 m to l1: light 9 W\n`,
		fits: "3G1.5",
		exceeds: "3G1",
	},
	{
		code: "joint-undersized",
		what: "connectors behind 20 A",
		plan: varied("joint-undersized", ["15 A", "{}"]),
		fits: "20 A",
		exceeds: "19.9 A",
	},
	{
		code: "slack-too-short",
		what: "the slack of a cable",
		plan: varied("slack-too-short", ["4 in", "{}"]),
		fits: "6 in",
		exceeds: "5.9 in",
	},
	{
		code: "gangs-too-few",
		what: "two devices in a box",
		plan: varied("gangs-too-few", ["gangs 1", "gangs {}"]),
		fits: "2",
		exceeds: "1",
	},
	{
		code: "box-overfilled",
		what: "two cables of 12-2 and a joint",
		plan: `${supply}circuit den from LC breaker 20 A by 12-2\n  9 ft to j1: box {}\n  6 ft to l1: light 9 W, box 18 cuin\n  from j1\n    6 ft to l2: light 9 W, box 18 cuin\n`,
		fits: "15.75 cuin",
		exceeds: "15.7 cuin",
	},
	{
		code: "terminal-overfilled",
		what: "the ports of a bar",
		plan: `${supply.trimEnd()}\n  NB: neutral-bar ports {}\ncircuit one from LC breaker 20 A by 12-2\n  8 ft to b1: receptacle\ncircuit two from LC breaker 20 A by 12-2\n  8 ft to b2: receptacle\n`,
		fits: "3",
		exceeds: "2",
	},
	{
		code: "terminal-overfilled",
		what: "the largest size that lugs take",
		plan: `${legs.replace("main 50 A, legs 2", "lugs only, legs 2 largest {}")}`,
		fits: "6 AWG",
		exceeds: "8 AWG",
	},
	{
		code: "terminal-overfilled",
		what: "the size under the screw of a receptacle",
		plan: `${supply}circuit one from LC breaker 20 A by {}\n  8 ft to b1: receptacle\n`,
		fits: "10-2",
		exceeds: "8-2",
	},
	{
		code: "batteries-unequal",
		what: "what two batteries in parallel hold",
		plan: pairOf("20 Ah", "{}", "24 in"),
		fits: "22 Ah",
		exceeds: "23 Ah",
	},
	{
		code: "batteries-unequal",
		what: "the leads of two batteries in parallel",
		plan: pairOf("100 Ah", "100 Ah", "{}"),
		fits: "37 in",
		exceeds: "39 in",
	},
];

export const limits: readonly Limit[] = [...protection, ...loads, ...workmanship];
