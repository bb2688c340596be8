import { journeys } from "./engines.mjs";

journeys("firefox");
