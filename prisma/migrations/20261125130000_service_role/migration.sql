-- The service does not work as the owner of these tables, but as a login role that is a member of this group.
DO $$
BEGIN
  -- Roles belong to the whole server: another database of it may have made the group, this very moment too.
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'ringledger_service') THEN
    CREATE ROLE ringledger_service NOLOGIN;
  END IF;
EXCEPTION
  WHEN duplicate_object OR unique_violation THEN NULL;
END
$$;

-- What the group may do. Evidence is what has the trigger that refuses its change: there the group reads and adds.
-- Nowhere may it empty, alter, own or make a table. A later migration that makes a table ends with
-- SELECT grant_service_rights();
CREATE FUNCTION grant_service_rights() RETURNS void LANGUAGE plpgsql SET search_path = public, pg_temp AS
$$
DECLARE
  kept record;
BEGIN
  REVOKE CREATE ON SCHEMA public FROM PUBLIC;
  GRANT USAGE ON SCHEMA public TO ringledger_service;
  FOR kept IN
    SELECT relname AS name, EXISTS (SELECT FROM pg_trigger
        WHERE tgrelid = pg_class.oid AND tgfoid = 'refuse_change_of_evidence'::regproc) AS is_evidence
    FROM pg_class
    WHERE relnamespace = 'public'::regnamespace AND relkind IN ('r', 'p') AND relname <> '_prisma_migrations'
  LOOP
    EXECUTE format('REVOKE ALL ON TABLE %I FROM PUBLIC, ringledger_service', kept.name);
    EXECUTE format('GRANT SELECT, INSERT ON TABLE %I TO ringledger_service', kept.name);
    IF NOT kept.is_evidence THEN
      EXECUTE format('GRANT UPDATE, DELETE ON TABLE %I TO ringledger_service', kept.name);
    END IF;
  END LOOP;
END
$$;
REVOKE ALL ON FUNCTION grant_service_rights() FROM PUBLIC;

SELECT grant_service_rights();

-- So that a service that does not know the owner can see whether the database has its shape.
DO $$
BEGIN
  IF to_regclass('_prisma_migrations') IS NOT NULL THEN
    GRANT SELECT ON TABLE _prisma_migrations TO ringledger_service;
  END IF;
END
$$;
