/** Random demands, journeys, services and businesses: everything needed, and any part of the rest. */
import type { Block, Draws } from "./draws.js";

/** What is asked of a case. */
export function demandsOf(draws: Draws): Block {
  const { whole, pick } = draws;
  return {
    "side pressure": `${whole(2, 20) / 10} kPa`,
    "top pressure": `${whole(2, 30) / 10} kPa`,
    "allowed sag": pick(["1/100", "1/180", "1/250"]),
    jerk: whole(10, 30) / 10,
    "safety factor": whole(10, 50) / 10,
    climate: pick(["dry", "damp"]),
    push: `${whole(20, 300)} N`,
    ...draws.some(5, { "top bears": pick(["stands", "kneels", "sits"]) }),
  };
}

/** Who moves it, and how. */
export function journeyOf(draws: Draws, rolls: boolean): Block {
  const { length, whole, pick } = draws;
  const from = whole(100, 700);
  const onWheels = {
    threshold: length(whole(0, 40)),
    gap: length(whole(0, 60)),
    wheel: length(pick([75, 100, 125])),
    tread: pick(["plastic", "hard rubber", "soft rubber"]),
    "wheel print": `${whole(1, 8)} cm2`,
    brakes: whole(0, 4),
  };
  const ramp = pick([
    { ramp: `${whole(0, 20)} deg` },
    { "ramp size": { rise: length(400), length: length(2400) } },
    {},
  ]);
  return {
    people: whole(1, 5),
    "lift from": length(from),
    "lift to": length(from + whole(0, 700)),
    reach: length(whole(200, 600)),
    "lifts per minute": pick([0.1, 0.2, 1, 4]),
    "lifting time": `${whole(1, 90)} min`,
    grip: pick(["good", "fair", "poor"]),
    vehicle: pick(["van", "lorry", "estate car"]),
    floor: pick(["even", "uneven"]),
    ...ramp,
    ...draws.some(5, {
      handling: pick(["careful", "usual", "rough", "parcel"]),
      stairs: `${whole(20, 42)} deg`,
      winch: `${whole(5, 30) * 100} N`,
      ...(rolls ? onWheels : {}),
      gust: `${whole(0, 20)} m/s`,
      slope: `${whole(0, 15)} deg`,
      lashing: lashingOf(draws, rolls),
    }),
  };
}

function lashingOf(draws: Draws, rolls: boolean): Block {
  const { whole, pick } = draws;
  return {
    tension: `${whole(5, 40) * 100} N`,
    straps: whole(1, 4),
    angle: `${whole(20, 90)} deg`,
    friction: whole(1, 6) / 10,
    ...draws.some(5, { "friction from": pick(["tilt test", "pull", "table"]) }),
    ...(rolls ? draws.some(5, { "stands on": pick(["wheels", "blocks"]) }) : {}),
  };
}

/** Heat and power. */
export function servicesOf(draws: Draws): Block {
  const { length, whole, pick } = draws;
  const battery = {
    capacity: `${whole(5, 120)} Ah`,
    voltage: `${pick([12, 12.8, 24])} V`,
    usable: `${whole(5, 10) * 10} %`,
    "must last": `${whole(1, 12)} h`,
    ...draws.some(5, {
      "rated for": "20 h",
      peukert: 1.1,
      inverter: "88 %",
      coldest: `${whole(-10, 15)} °C`,
      "age left": "80 %",
      fuse: "20 A",
      "wire gauge": pick([8, 12, 14]),
      "wire length": length(900),
    }),
  };
  const mains = {
    voltage: `${pick([120, 230])} V`,
    breaker: `${pick([10, 15, 16])} A`,
    "cable gauge": pick([12, 14, 16]),
    "cable length": length(whole(2, 30) * 1000),
    "power factor": 0.8,
    ...draws.some(5, { "plug strip": { rated: "10 A", sockets: whole(1, 8) } }),
  };
  return draws.some(5, { hottest: `${whole(20, 45)} °C`, altitude: `${whole(0, 3000)} m`, battery, mains });
}

/** What it must earn. */
export function businessOf(draws: Draws): Block {
  const { whole } = draws;
  return {
    "ready made": whole(0, 3000),
    "own hour": whole(0, 60),
    "building time": `${whole(4, 80)} h`,
    tools: draws.some(5, { "hand riveter": whole(20, 90), router: whole(50, 300) }),
    "income per job": whole(0, 500),
    "running cost per job": whole(0, 200),
    "jobs per month": whole(1, 20) / 2,
    interest: `${whole(0, 15)} %`,
    ...draws.some(5, { "price doubt": "10 %", "hours doubt": "20 %", "income spread": "40 %" }),
  };
}
