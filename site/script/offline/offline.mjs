/** The door of the service worker: hands it its own surroundings. */
import { serveOffline } from "./service-worker.ts";

serveOffline(self);
