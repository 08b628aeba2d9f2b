-- The demo restaurant that the program loads into an empty database by itself: nobody's own files belong into it unless they name it.
ALTER TABLE venue ADD demo boolean NOT NULL DEFAULT false;

DROP FUNCTION venues_seen_by(text);
CREATE FUNCTION venues_seen_by(person text) RETURNS TABLE (id int, name text, name_key text, demo boolean) LANGUAGE sql STABLE
  SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp
  AS $$ SELECT v.id, v.name, v.name_key, v.demo FROM venue v WHERE person IS NOT NULL ORDER BY v.name_key COLLATE "C" $$;
GRANT EXECUTE ON FUNCTION venues_seen_by(text) TO plateworth_app;
