import { journeys } from "./engines.mjs";

journeys("webkit");
